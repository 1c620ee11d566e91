using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Metrology.Quantities;

namespace Handspun.Setups;

/// <summary>What is asked of a gauge that is set to something of known size before it measures.</summary>
internal static class SettingFields
{
    private const string Higher = "higher";
    private const string Lower = "lower";

    /// <summary>The setting in one sentence.</summary>
    /// <param name="said">What was said.</param>
    /// <param name="larger">What reads higher or lower, such as <c>a larger bore</c>.</param>
    /// <param name="unit">The unit of lengths.</param>
    public static string Tell(SettingSetup said, string larger, LengthUnit unit) => said is { SettingMillimetres: { } size, SettingU95Millimetres: { } doubt }
        ? $"Set to {LengthText.WithUncertainty(Of(size), Of(doubt), unit)}, {(said.ShownMillimetres == 0 ? "zeroed there" : $"where it shows {LengthText.Of(Of(said.ShownMillimetres), unit)}")}; {larger} reads {(said.LargerReadsLower ? "lower" : "higher")}."
        : "What the gauge is set to was not typed: there is a deviation from its zero, no size and no verdict.";

    /// <summary>The fields, with what stands there now.</summary>
    /// <param name="said">What was said; null where nothing was.</param>
    /// <param name="setWith">What it is set with, such as <c>Ring or micrometer</c>.</param>
    /// <param name="larger">What reads higher or lower, such as <c>A larger bore reads</c>.</param>
    /// <param name="unit">The unit of lengths.</param>
    public static IEnumerable<SetupField> Of(SettingSetup? said, string setWith, string larger, LengthUnit unit) =>
    [
        new("setting", setWith, LengthText.AsTyped(said?.SettingMillimetres, unit)) { Hint = unit.IsInch ? "such as 0.8430 in" : "such as 21.412 mm" },
        new("setting_u95", "Known to within \u00b1", LengthText.AsTyped(said?.SettingU95Millimetres, unit)) { Hint = "from its certificate, else its division" },
        new("shown", "Gauge shows there", said is null ? "" : LengthText.AsTyped(said.ShownMillimetres, unit)) { Hint = "empty where it was zeroed" },
        new("reads", larger, said?.LargerReadsLower == true ? Lower : Higher) { Choices = [(Higher, "higher"), (Lower, "lower")] },
    ];

    /// <summary>Reads them.</summary>
    /// <param name="into">The setup that they belong to.</param>
    /// <param name="typed">What was typed.</param>
    /// <param name="setWith">What it is set with, such as <c>ring or micrometer</c>.</param>
    /// <exception cref="Http.RequestSentenceException">Something is no length or no choice.</exception>
    public static T Read<T>(T into, TypedSheet typed, string setWith)
        where T : SettingSetup
    {
        return into with
        {
            SettingMillimetres = typed.Length("setting", $"The size of the {setWith}")?.Millimetres,
            SettingU95Millimetres = typed.Length("setting_u95", "How well that size is known")?.Millimetres,
            ShownMillimetres = typed.Length("shown", "What the gauge shows at its setting")?.Millimetres ?? 0,
            LargerReadsLower = typed.Choice("reads", "reads", Higher, Lower) == Lower,
        };
    }

    private static Length Of(double millimetres) => Length.FromMillimetres(millimetres);
}
