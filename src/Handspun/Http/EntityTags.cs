namespace Handspun.Http;

/// <summary>Entity tags of texts that several people change (RFC 9110, 8.8.3 and 13.1.1).</summary>
internal static class EntityTags
{
    /// <summary>The tag that a call wants to have been the last; null where it minds none.</summary>
    public static string? Asked(HttpContext http) => http.Request.Headers.IfMatch.ToString() is { Length: > 0 } asked and not "*" ? asked.Trim('"') : null;

    /// <summary>Says the tag of what is answered.</summary>
    public static void Tell(HttpContext http, string tag) => http.Response.Headers.ETag = $"\"{tag}\"";
}
