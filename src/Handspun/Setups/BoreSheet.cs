using System.Globalization;
using Handspun.Http;
using Handspun.Jobs.Bores;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Metrology.Quantities;

namespace Handspun.Setups;

/// <summary>What a bore gauge was set to, and where it is rocked next.</summary>
internal sealed class BoreSheet : ISetupSheet
{
    private const string Higher = "higher";
    private const string Lower = "lower";

    /// <inheritdoc/>
    public PointKind Kind => PointKind.Bore;

    /// <inheritdoc/>
    public string Title => "Setting and place";

    /// <inheritdoc/>
    public string Tell(PointSetup? setup, LengthUnit unit)
    {
        var said = setup as BoreSetup ?? new BoreSetup();
        var setting = said is { SettingMillimetres: { } size, SettingU95Millimetres: { } doubt }
            ? $"Set to {LengthText.WithUncertainty(Of(size), Of(doubt), unit)}, {(said.ShownMillimetres == 0 ? "zeroed there" : $"where it shows {LengthText.Of(Of(said.ShownMillimetres), unit)}")}; a larger bore reads {(said.LargerReadsLower ? "lower" : "higher")}."
            : "What the gauge is set to was not typed: there is a deviation from its zero, no size and no verdict.";
        return BorePlaces.InWords(said, unit) is { } place ? $"{setting} Next place: {place}." : $"{setting} Where in the bore was not typed.";
    }

    /// <inheritdoc/>
    public IReadOnlyList<SetupField> Fields(PointSetup? setup, LengthUnit unit)
    {
        var said = setup as BoreSetup;
        var example = unit.IsInch ? "such as 0.8430 in" : "such as 21.412 mm";
        return
        [
            new("setting", "Ring or micrometer", LengthText.AsTyped(said?.SettingMillimetres, unit)) { Hint = example },
            new("setting_u95", "Known to within \u00b1", LengthText.AsTyped(said?.SettingU95Millimetres, unit)) { Hint = "from its certificate, else its division" },
            new("shown", "Gauge shows there", said is null ? "" : LengthText.AsTyped(said.ShownMillimetres, unit)) { Hint = "empty where it was zeroed" },
            new("reads", "A larger bore reads", said?.LargerReadsLower == true ? Lower : Higher) { Choices = [(Higher, "higher"), (Lower, "lower")] },
            new("depth", "Depth from the mouth", LengthText.AsTyped(said?.DepthMillimetres, unit)) { Hint = unit.IsInch ? "such as 0.5 in" : "such as 12 mm", AtTheBay = true },
            new("clock", "Across, clock position", said?.ClockHours?.ToString("0.##", CultureInfo.InvariantCulture) ?? "")
            {
                AtTheBay = true,
                Choices = [("", "not said"), ("12", "12 (and 6)"), ("1", "1 (and 7)"), ("2", "2 (and 8)"), ("3", "3 (and 9)"), ("4", "4 (and 10)"), ("5", "5 (and 11)")],
            },
        ];
    }

    /// <inheritdoc/>
    public PointSetup Read(TypedSheet typed)
    {
        var setup = new BoreSetup
        {
            SettingMillimetres = typed.Length("setting", "The size of the ring or micrometer")?.Millimetres,
            SettingU95Millimetres = typed.Length("setting_u95", "How well that size is known")?.Millimetres,
            ShownMillimetres = typed.Length("shown", "What the gauge shows at its setting")?.Millimetres ?? 0,
            LargerReadsLower = typed.Choice("reads", "reads", Higher, Lower) == Lower,
            DepthMillimetres = typed.Length("depth", "The depth")?.Millimetres,
            ClockHours = typed.Number("clock", "The clock position", "12"),
        };
        return setup.Problems().FirstOrDefault() is { } problem ? throw new RequestSentenceException(problem) : setup;
    }

    private static Length Of(double millimetres) => Length.FromMillimetres(millimetres);
}
