using System.Globalization;
using Handspun.Jobs.Cranks;
using Handspun.Jobs.Lengths;
using Handspun.Jobs.Points;
using Handspun.Jobs.Store;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Http;

/// <summary>Calls about a job's crank: its measures, and what both of its ends say together.</summary>
internal static class CrankCalls
{
    /// <summary>Maps them.</summary>
    public static void MapCrank(this IEndpointRouteBuilder calls)
    {
        var crank = calls.MapGroup("/jobs/{job}/crank");
        crank.MapGet("", async (string job, JobStore store, StationOptions options, CancellationToken cancellation) =>
            CrankMessage.Of(await store.GetAsync(job, cancellation), options.Unit));
        crank.MapPut("", async (string job, CrankRequest request, JobStore store, StationOptions options, CancellationToken cancellation) =>
        {
            var (sheet, drive, pinion) = request.Read();
            return CrankMessage.Of(await store.SetCrankAsync(job, sheet, drive, pinion, cancellation), options.Unit);
        });
    }

    /// <summary>The measures as they are typed: each length with its unit, angles in degrees.</summary>
    internal sealed record CrankRequest(
        string? DriveSideFromBearing, string? PinionSideFromBearing, string? BetweenBearings, string? Division, string? CrankpinDeg = null, string? CrankpinDivisionDeg = null)
    {
        public (CrankSheet Sheet, RunoutSetup DriveSide, RunoutSetup PinionSide) Read()
        {
            var division = Length("division", Division);
            var sheet = new CrankSheet
            {
                BetweenBearingsMillimetres = Length("between_bearings", BetweenBearings),
                DivisionMillimetres = division,
                CrankpinDegrees = Degrees("crankpin_deg", CrankpinDeg),
                CrankpinDivisionDegrees = Degrees("crankpin_division_deg", CrankpinDivisionDeg) ?? 0,
            };
            var drive = new RunoutSetup { FromBearingMillimetres = Length("drive_side_from_bearing", DriveSideFromBearing), DivisionMillimetres = division };
            var pinion = new RunoutSetup { FromBearingMillimetres = Length("pinion_side_from_bearing", PinionSideFromBearing), DivisionMillimetres = division };
            return sheet.Problems().Concat(drive.Problems()).Concat(pinion.Problems()).FirstOrDefault() is { } problem
                ? throw new RequestSentenceException(problem)
                : (sheet, drive, pinion);
        }

        private static double Length(string name, string? text) => LengthText.TryParse(text, out var length)
            ? length.Millimetres
            : throw new RequestSentenceException($"{(string.IsNullOrWhiteSpace(text) ? $"{name} is missing" : $"{name} '{text}' is no length")}. {LengthText.HowToWrite}");

        private static double? Degrees(string name, string? text) =>
            string.IsNullOrWhiteSpace(text) ? null
            : double.TryParse(text.Trim().TrimEnd('°').Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var degrees) ? degrees
            : throw new RequestSentenceException($"{name} '{text}' is no angle. Give it in degrees, such as '37.5', or leave it empty.");
    }
}
