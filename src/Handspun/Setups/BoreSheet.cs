using System.Globalization;
using Handspun.Jobs.Bores;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;

namespace Handspun.Setups;

/// <summary>What a bore gauge was set to, and where it is rocked next.</summary>
internal sealed class BoreSheet : ISetupSheet
{
    /// <inheritdoc/>
    public PointKind Kind => PointKind.Bore;

    /// <inheritdoc/>
    public string Title => "Setting and place";

    /// <inheritdoc/>
    public string Tell(PointSetup? setup, LengthUnit unit)
    {
        var said = setup as BoreSetup ?? new BoreSetup();
        var setting = SettingFields.Tell(said, "a larger bore", unit);
        return BorePlaces.InWords(said, unit) is { } place ? $"{setting} Next place: {place}." : $"{setting} Where in the bore was not typed.";
    }

    /// <inheritdoc/>
    public IReadOnlyList<SetupField> Fields(PointSetup? setup, LengthUnit unit)
    {
        var said = setup as BoreSetup;
        return
        [
            .. SettingFields.Of(said, "Ring or micrometer", "A larger bore reads", unit),
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
        var setup = SettingFields.Read(new BoreSetup(), typed, "ring or micrometer") with
        {
            DepthMillimetres = typed.Length("depth", "The depth")?.Millimetres,
            ClockHours = typed.Number("clock", "The clock position", "12"),
        };
        return TypedSheet.Sound(setup);
    }
}
