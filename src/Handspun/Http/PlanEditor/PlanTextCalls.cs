using Handspun.Jobs.Plans;
using Handspun.PlanFiles;
using Handspun.Wire;

namespace Handspun.Http.PlanEditor;

/// <summary>Calls about the text of plans. With <c>If-Match</c>, nothing may have been written since that text; an empty file has a tag of its own.</summary>
internal static class PlanTextCalls
{
    /// <summary>Maps them.</summary>
    public static void MapPlanTexts(this IEndpointRouteBuilder calls)
    {
        var plan = calls.MapGroup("/plans/{plan}");
        plan.MapGet("/text", (string plan, PlanDesk desk, HttpContext http) =>
        {
            var text = desk.Read(plan);
            EntityTags.Tell(http, text.Tag);
            return TypedResults.Text(text.Text, "application/toml");
        });
        plan.MapPut("", async (string plan, PlanDesk desk, PlanShelf shelf, HttpContext http) =>
        {
            using var body = new StreamReader(http.Request.Body);
            EntityTags.Tell(http, desk.Put(plan, EntityTags.Asked(http), await body.ReadToEndAsync(http.RequestAborted)).Tag);
            return PlanMessage.Of(shelf.Find(plan));
        }).Accepts<string>("application/toml", "text/plain");
    }
}
