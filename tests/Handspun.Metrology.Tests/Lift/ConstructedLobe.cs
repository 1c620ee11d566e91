using System.Text.Json;
using Handspun.Simulation.Cams;

namespace Handspun.Metrology.Tests.Lift;

/// <summary>Durations of two symmetric lobes at checking lifts, by closed form: cam-lobe-constructed.json, made for tests, not measured.</summary>
/// <remarks>9 mm at 106 degrees of the crank, half as wide as 110 degrees of the crank.</remarks>
internal static class ConstructedLobe
{
    public static IEnumerable<(double CheckingLift, double Harmonic, double Cycloidal)> Rows()
    {
        using var document = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Lift", "cam-lobe-constructed.json")));
        return [.. document.RootElement.GetProperty("rows").EnumerateArray().Select(row => (
            row.GetProperty("checking_lift").GetDouble(),
            row.GetProperty("raised_cosine_duration_deg").GetDouble(),
            row.GetProperty("cycloidal_duration_deg").GetDouble()))];
    }

    /// <summary>The lobe in degrees of the cam: half of those of the crank.</summary>
    public static CamLobe Of(FlankLaw law) => new() { Law = law, LiftMillimetres = 9, CentrelineDegrees = 53, OpeningDegrees = 55, ClosingDegrees = 55 };
}
