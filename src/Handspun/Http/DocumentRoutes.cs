namespace Handspun.Http;

/// <summary>The station's own description: HTTP as OpenAPI, the broker as AsyncAPI.</summary>
internal static class DocumentRoutes
{
    /// <summary>Maps them.</summary>
    public static void MapDocuments(this IEndpointRouteBuilder routes)
    {
        routes.MapOpenApi("/api/{documentName}/openapi.json");
        routes.MapGet("/api/v1/asyncapi.json", () => TypedResults.Stream(
            typeof(DocumentRoutes).Assembly.GetManifestResourceStream("asyncapi.json")!, "application/json")).ExcludeFromDescription();
    }
}
