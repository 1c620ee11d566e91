using Handspun.Bays;
using Handspun.Jobs.Book;
using Handspun.Jobs.Book.Acts;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Store;
using Handspun.Pages;
using Handspun.Pages.Plans;
using Handspun.WorkedOut;
using Microsoft.AspNetCore.Http.HttpResults;

namespace Handspun.Http.Plans;

/// <summary>The page of a point's limit: a limit stands unconfirmed until somebody types the manual and the page.</summary>
internal static class LimitPages
{
    /// <summary>Maps it.</summary>
    public static void MapLimitPages(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/jobs/{job}/points/{point}/limit", (string job, string point, PageDesk desk, CancellationToken cancellation) => desk.ShowAsync(job, PageOf(point), cancellation)).ExcludeFromDescription();
        // The same-origin guard does for forms what a token would do.
        routes.MapPost("/jobs/{job}/points/{point}/limit", WriteAsync).DisableAntiforgery().ExcludeFromDescription();
    }

    /// <summary>The limit as pages show it.</summary>
    public static LimitView? View(Limit? limit, LengthUnit unit) => limit is null
        ? null
        : new(LimitSentence.Bounds(limit, unit), LimitCondition.InWords(limit) is { } condition ? $"{limit.Source} ({condition})" : limit.Source, limit.Confirmed, limit.ConfirmedBy);

    private static async Task<IResult> WriteAsync(string job, string point, PageDesk desk, BayDesk bay, WorkedOutDesk workedOut, TimeProvider time, HttpRequest request)
    {
        var answer = await desk.WriteAsync(
            job, request, PageOf(point), Subject.Limit(point),
            (found, form) => [new(Subject.Limit(point), Deed(found, point, form, time))],
            (found, _) => AddressOf(found, point));
        await bay.RenewAsync(job, point, request.HttpContext.RequestAborted);   // the next capture is held against the new limit
        await workedOut.RenewAsync(job, point, request.HttpContext.RequestAborted);
        return answer;
    }

    private static Deed Deed(Job job, string point, FormState form, TimeProvider time)
    {
        var typed = new TypedLimit(form.Of("at_least"), form.Of("at_most"), form.Of("source"), form.Of("drive"), form.Of("age"));
        return form.Of("act") == "confirm" ? LimitActs.Confirm(job, point, typed, form.Of("by"), time.GetUtcNow()) : LimitActs.Set(job, point, typed);
    }

    private static PageOfJob PageOf(string point) => (job, shown, form) =>
    {
        var found = JobStore.PointIn(job, point);
        return new RazorComponentResult(typeof(LimitPage), new
        {
            Model = new LimitPageView
            {
                Job = job.Number,
                Bike = job.Bike.Title,
                Id = point,
                Point = found.Title,
                Now = View(found.Limit, shown.Unit),
                AtMost = LengthText.AsTyped(found.Limit?.UpperMillimetres, shown.Unit),
                AtLeast = LengthText.AsTyped(found.Limit?.LowerMillimetres, shown.Unit),
                Drive = LimitCondition.Of(found.Limit?.Drive),
                Age = LimitCondition.Of(found.Limit?.Age),
                Back = AddressOf(job, point),
                History = ViewsOfPlans.History(job.BookOf(Subject.Limit(point))),
                Version = job.Version,
                Form = form,
            },
        });
    };

    private static string AddressOf(Job job, string point) => job.Plan?.Steps.FirstOrDefault(step => step.Point == point) is { } step
        ? ViewsOfPlans.AddressOf(job, step.Code)
        : $"/jobs/{job.Number}#{point}";
}
