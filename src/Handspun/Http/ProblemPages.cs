using Handspun.Pages;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http;

/// <summary>Shows a problem as a page where a person asked, and as problem details where a program did.</summary>
internal static class ProblemPages
{
    /// <summary>Whether a browser asked for a page.</summary>
    public static bool WantsPage(HttpContext context) =>
        !context.Request.Path.StartsWithSegments("/api") && context.Request.Headers.Accept.Any(accept => accept?.Contains("text/html", StringComparison.Ordinal) == true);

    /// <summary>Answers for a status that nothing else has answered for.</summary>
    public static async Task ShowAsync(StatusCodeContext context)
    {
        var http = context.HttpContext;
        var (title, sentence) = http.Response.StatusCode == StatusCodes.Status404NotFound
            ? ("Not there", "There is nothing at this address: go to the list of jobs.")
            : ("Not understood", "The station does not take that request here.");
        await AnswerAsync(http, http.Response.StatusCode, title, sentence);
    }

    /// <summary>Answers with the page, or with problem details (RFC 9457).</summary>
    public static Task AnswerAsync(HttpContext context, int status, string title, string sentence) => WantsPage(context)
        ? WriteAsync(context, status, title, sentence)
        : TypedResults.Problem(sentence, statusCode: status, title: title).ExecuteAsync(context);

    /// <summary>Writes the page.</summary>
    public static Task WriteAsync(HttpContext context, int status, string title, string sentence) =>
        new RazorComponentResult<ProblemPage>(new { Model = new ProblemView(status, title, sentence) }) { StatusCode = status }.ExecuteAsync(context);
}
