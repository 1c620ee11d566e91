using System.Globalization;
using Handspun.Jobs.Book;
using Handspun.Jobs.Orders;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Http.Plans;

/// <summary>Writes into a job's book what a call asked for, minding <c>If-Match</c> (RFC 9110, 13.1.1).</summary>
internal sealed class BookDesk(JobBook book, StationOptions options)
{
    /// <summary>What the station was told at its start.</summary>
    public StationOptions Options => options;

    /// <summary>Writes one line about one thing.</summary>
    public async Task<JobMessage> WriteAsync(HttpContext http, string job, string about, string? by, Func<Job, Deed> act) =>
        Answer(http, await book.WriteAsync(job, about, SignatureOf(http, by), act, http.RequestAborted));

    /// <summary>Writes lines that belong together.</summary>
    public async Task<JobMessage> WriteAsync(HttpContext http, string job, string? by, Func<Job, IReadOnlyList<BookLine>> act) =>
        Answer(http, await book.WriteAsync(job, _ => null, SignatureOf(http, by), act, http.RequestAborted));

    /// <summary>The version of a job as an entity tag.</summary>
    public static string TagOf(Job job) => string.Create(CultureInfo.InvariantCulture, $"\"{job.Version}\"");

    private JobMessage Answer(HttpContext http, Job job)
    {
        http.Response.Headers.ETag = TagOf(job);
        return JobMessage.Of(job, options.Unit);
    }

    private static Signature SignatureOf(HttpContext http, string? by)
    {
        var asked = http.Request.Headers.IfMatch.ToString();
        return asked is "" or "*" ? new(by)
            : int.TryParse(asked.Trim('"'), NumberStyles.None, CultureInfo.InvariantCulture, out var seen) ? new(by, seen, Exact: true)
            : throw new RequestSentenceException("If-Match is the ETag that the job was answered with, such as \"7\"; leave it out to write whatever was written meanwhile.");
    }
}
