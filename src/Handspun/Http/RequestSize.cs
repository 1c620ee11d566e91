using Microsoft.AspNetCore.Http.Metadata;

namespace Handspun.Http;

/// <summary>How large what is sent to an address may be.</summary>
/// <param name="Most">In bytes.</param>
/// <param name="TooLarge">What is said of more, and what to do.</param>
internal sealed record RequestSize(long Most, string TooLarge) : IRequestSizeLimitMetadata
{
    /// <summary>What is said where an address has no size of its own.</summary>
    public const string Usually = "That is too large: send less of it at once.";

    /// <inheritdoc/>
    public long? MaxRequestBodySize => Most;
}

/// <summary>Gives addresses their size.</summary>
internal static class RequestSizes
{
    /// <summary>Lets a request be as large as that, with forms in it.</summary>
    public static TBuilder WithSize<TBuilder>(this TBuilder endpoint, RequestSize size) where TBuilder : IEndpointConventionBuilder =>
        endpoint.WithFormOptions(multipartBodyLengthLimit: size.Most).WithMetadata(size);
}
