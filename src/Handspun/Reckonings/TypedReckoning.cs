using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Metrology.Quantities;

namespace Handspun.Reckonings;

/// <summary>What was typed for a reckoning, by the names of its fields; the first thing that cannot be is kept.</summary>
/// <param name="typed">Each value as it was typed; what is missing or blank was left empty.</param>
/// <param name="unit">The unit of numbers that stand without one.</param>
internal sealed class TypedReckoning(IReadOnlyDictionary<string, string?> typed, LengthUnit unit)
{
    /// <summary>The key of how well every length was measured.</summary>
    public const string Known = "known";

    /// <summary>What cannot be read and what to do; null where nothing is wrong.</summary>
    public string? Problem { get; private set; }

    /// <summary>What was typed; null where nothing was.</summary>
    public string? Text(string name) => typed.GetValueOrDefault(name) is { } text && !string.IsNullOrWhiteSpace(text) ? text.Trim() : null;

    /// <summary>A length, known as well as all of them; null where it was left empty or cannot be read.</summary>
    public Measured<Length>? Length(string name) => Read(name) is { } length ? new(length, Read(Known) ?? Missing()) : null;

    /// <summary>A plain number; null where it was left empty or cannot be read.</summary>
    public double? Number(string name)
    {
        if (Text(name) is not { } text)
        {
            return null;
        }

        if (double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
        {
            return number;
        }

        Problem ??= $"'{text}' is no number: type it with digits, such as 24.";
        return null;
    }

    private Length? Read(string name)
    {
        if (Text(name) is not { } text)
        {
            return null;
        }

        if (LengthText.TryParse(text, unit, out var length))
        {
            return length;
        }

        Problem ??= $"'{text}' is no length. {LengthText.HowToWrite}";
        return null;
    }

    private Length Missing()
    {
        Problem ??= "Say how well the lengths were measured: the tool's division will do.";
        return default;
    }
}
