using Handspun.Archives;
using Handspun.Capture.Bays;
using Handspun.Gauges.Listening;
using Handspun.Http.Plans;
using Handspun.Jobs.Book;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Store;
using Handspun.Photos;
using Handspun.SharedFiles;
using Handspun.Station;
using Microsoft.AspNetCore.Diagnostics;

namespace Handspun.Http;

/// <summary>Turns what went wrong into problem details (RFC 9457) with a sentence that says what to do.</summary>
internal sealed class SentenceForExceptions(IProblemDetailsService problems) : IExceptionHandler
{
    /// <inheritdoc/>
    public async ValueTask<bool> TryHandleAsync(HttpContext httpContext, Exception exception, CancellationToken cancellationToken)
    {
        var (status, title, sentence) = exception switch
        {
            JobNotFoundException or GaugeNotFoundException or PlanNotFoundException => (StatusCodes.Status404NotFound, "Not there", exception.Message),
            BayRefusalException or GaugeRefusalException => (StatusCodes.Status409Conflict, "Not now", exception.Message),
            WrittenMeanwhileException { Exact: true } => (StatusCodes.Status412PreconditionFailed, "Changed meanwhile", exception.Message),
            ChangedMeanwhileException => (StatusCodes.Status412PreconditionFailed, "Changed meanwhile", exception.Message),
            StationTroubleException => (StatusCodes.Status409Conflict, "Not now", exception.Message),
            HeldBackException or WrittenMeanwhileException => (StatusCodes.Status409Conflict, "Not now", exception.Message),
            BookRefusalException or PlanException => (StatusCodes.Status400BadRequest, "Not understood", exception.Message),
            RequestSentenceException => (StatusCodes.Status400BadRequest, "Not understood", exception.Message),
            ArchiveRefusalException { IsThere: true } => (StatusCodes.Status409Conflict, "There already", exception.Message),
            ArchiveRefusalException => (StatusCodes.Status400BadRequest, "Not taken in", exception.Message),
            PhotoRefusalException => (StatusCodes.Status400BadRequest, "Not a photo", exception.Message),
            BadHttpRequestException { StatusCode: StatusCodes.Status413PayloadTooLarge } or InvalidDataException => (StatusCodes.Status413PayloadTooLarge, "Too large", TooLargeAt(httpContext)),
            BadHttpRequestException bad => (bad.StatusCode, "Not understood", "The request is not as it should be: send JSON with the keys that the call takes. " + (bad.InnerException?.Message ?? bad.Message)),
            _ => (StatusCodes.Status500InternalServerError, "The station failed", "Something went wrong inside the station; its log says what. Nothing that was recorded is lost."),
        };
        httpContext.Response.StatusCode = status;
        if (ProblemPages.WantsPage(httpContext))
        {
            await ProblemPages.WriteAsync(httpContext, status, title, sentence);
            return true;
        }

        return await problems.TryWriteAsync(new ProblemDetailsContext
        {
            HttpContext = httpContext,
            ProblemDetails = { Status = status, Title = title, Detail = sentence },
        });
    }

    private static string TooLargeAt(HttpContext context) =>
        context.Features.Get<IExceptionHandlerFeature>()?.Endpoint?.Metadata.GetMetadata<RequestSize>()?.TooLarge ?? RequestSize.Usually;
}

/// <summary>A request that cannot be met as it is.</summary>
/// <param name="sentence">What is wrong and what to do.</param>
internal sealed class RequestSentenceException(string sentence) : Exception(sentence);
