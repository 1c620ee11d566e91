using System.Text.Json;

namespace Handspun.EndToEnd.Parts;

/// <summary>Problem details (RFC 9457) as an answer.</summary>
internal static class Problem
{
    public static async Task IsAsync(HttpResponseMessage answer, int status, string sentence)
    {
        var body = await answer.Content.ReadAsStringAsync();
        Assert.True(status == (int)answer.StatusCode, $"{(int)answer.StatusCode} instead of {status}: {body}");
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        Assert.Contains(sentence, JsonDocument.Parse(body).RootElement.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }
}
