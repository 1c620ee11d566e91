using System.Globalization;
using Handspun.Http;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Metrology.Quantities;

namespace Handspun.Setups;

/// <summary>What was typed into a sheet, by the names of its fields.</summary>
internal sealed class TypedSheet
{
    private readonly IReadOnlyDictionary<string, string?> _typed;

    /// <param name="typed">Each value as it was typed; what is missing or blank was left empty.</param>
    /// <param name="sheet">The sheet that it is for.</param>
    /// <exception cref="RequestSentenceException">A name is none of the sheet's.</exception>
    public TypedSheet(IReadOnlyDictionary<string, string?> typed, ISetupSheet sheet)
    {
        _typed = typed;
        var known = sheet.Fields(null, LengthUnit.Millimetre).Select(field => field.Name).ToArray();
        if (typed.Keys.FirstOrDefault(name => !known.Contains(name)) is { } strange)
        {
            throw new RequestSentenceException($"Nothing is asked under '{strange}': give {string.Join(", ", known)}.");
        }
    }

    /// <summary>What was read from a sheet, where it can be.</summary>
    /// <exception cref="RequestSentenceException">It cannot be; says what to type.</exception>
    public static PointSetup Sound(PointSetup setup) => setup.Problems().FirstOrDefault() is { } problem ? throw new RequestSentenceException(problem) : setup;

    /// <summary>What was typed; null where nothing was.</summary>
    public string? Text(string name) => _typed.GetValueOrDefault(name) is { } text && !string.IsNullOrWhiteSpace(text) ? text.Trim() : null;

    /// <summary>A length with its unit, and a sign where one makes sense; null where nothing was typed.</summary>
    /// <exception cref="RequestSentenceException">It is no length.</exception>
    public Length? Length(string name, string called)
    {
        if (Text(name) is not { } text)
        {
            return null;
        }

        return LengthText.TryParse(text, unit: null, out var length)
            ? length
            : throw new RequestSentenceException($"{called} '{text}' is no length. {LengthText.HowToWrite}");
    }

    /// <summary>A number; null where nothing was typed.</summary>
    /// <exception cref="RequestSentenceException">It is no number.</exception>
    public double? Number(string name, string called, string example) => Number(name, called, example, text => text, NumberStyles.AllowDecimalPoint);

    /// <summary>A number that may be below zero; null where nothing was typed.</summary>
    /// <exception cref="RequestSentenceException">It is no number.</exception>
    public double? SignedNumber(string name, string called, string example) => Number(
        name, called, example, text => text.Replace('\u2212', '-').TrimEnd('\u00b0').TrimEnd(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign);

    private double? Number(string name, string called, string example, Func<string, string> bare, NumberStyles style) =>
        Text(name) is not { } text ? null
        : double.TryParse(bare(text).Replace(',', '.'), style, CultureInfo.InvariantCulture, out var number) ? number
        : throw new RequestSentenceException($"{called} '{text}' is no number. Give it like '{example}', or leave it empty.");

    /// <summary>One of several codes; the first where nothing was chosen.</summary>
    /// <exception cref="RequestSentenceException">It is none of them.</exception>
    public string Choice(string name, string called, params IReadOnlyList<string> codes) =>
        Text(name) is not { } text ? codes[0]
        : codes.Contains(text) ? text
        : throw new RequestSentenceException($"{called} is one of {string.Join(", ", codes)}, not '{text}'.");
}
