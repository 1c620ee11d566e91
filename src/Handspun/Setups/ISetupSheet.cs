using System.Globalization;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;

namespace Handspun.Setups;

/// <summary>How what is said of one kind of point before it is measured is typed and told. A new kind is a sheet and a line in <see cref="SetupSheets"/>.</summary>
internal interface ISetupSheet
{
    /// <summary>The kind of point that it is for.</summary>
    PointKind Kind { get; }

    /// <summary>What the sheet asks, in a few words.</summary>
    string Title { get; }

    /// <summary>What stands there now, in one sentence or two; also what is lost where nothing was said.</summary>
    string Tell(PointSetup? setup, LengthUnit unit);

    /// <summary>What is typed, in order, with what stands there now.</summary>
    IReadOnlyList<SetupField> Fields(PointSetup? setup, LengthUnit unit);

    /// <summary>Reads what was typed: each value by its field's name; what is not there was left empty.</summary>
    /// <exception cref="Http.RequestSentenceException">Something cannot be; says what to type.</exception>
    PointSetup Read(TypedSheet typed);
}

/// <summary>One thing to type or to choose.</summary>
/// <param name="Name">Its key where it is sent.</param>
/// <param name="Label">What it is called.</param>
/// <param name="Value">What stands there now; empty where nothing does.</param>
internal sealed record SetupField(string Name, string Label, string Value)
{
    /// <summary>A number as a field shows it; empty where there is none.</summary>
    public static string Number(double? value) => value?.ToString("0.####", CultureInfo.InvariantCulture) ?? "";

    /// <summary>How to write it, in a few words; null where that is plain.</summary>
    public string? Hint { get; init; }

    /// <summary>Whether it changes from capture to capture, so that the bay's screen asks for it too.</summary>
    public bool AtTheBay { get; init; }

    /// <summary>What to choose from, code and words; null where it is typed.</summary>
    public IReadOnlyList<(string Code, string Words)>? Choices { get; init; }
}
