using Handspun.Broker;
using Handspun.Http;
using Handspun.Jobs.Orders;

namespace Handspun.Archives;

/// <summary>Takes in archives that are sent to the station.</summary>
internal sealed class ArchiveDesk(ArchiveIntake intake, ResultPublisher results)
{
    /// <summary>How large an archive that is sent may be. A larger one is taken in by <c>handspun unpack</c>.</summary>
    public static RequestSize Size { get; } = new(1L << 30, "That is too large to be sent: an archive may have 1024 MB. Copy it to the station's machine and take it in there: handspun unpack FILE.");

    /// <summary>Takes in what a form brought: the archive, and the number that the job gets here where one was typed.</summary>
    /// <exception cref="RequestSentenceException">There is no archive in it.</exception>
    /// <exception cref="ArchiveRefusalException">It cannot be taken in; nothing was.</exception>
    /// <returns>The job as it is here; what counts in it is on the broker.</returns>
    public async Task<Job> TakeAsync(IFormCollection sent, CancellationToken cancellationToken)
    {
        var archive = sent.Files.FirstOrDefault(file => file.Length > 0)
            ?? throw new RequestSentenceException("There is no archive: send multipart/form-data with the archive that another station packed, and with number where the job gets another one here.");
        var number = sent["number"].ToString().Trim();
        await using var from = archive.OpenReadStream();
        var job = await intake.TakeAsync(from, Path.GetFileName(archive.FileName), number.Length == 0 ? null : number, cancellationToken);
        foreach (var point in job.Points)
        {
            await results.PublishCountingAsync(job, point, CancellationToken.None);
        }

        return job;
    }
}
