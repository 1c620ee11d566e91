using System.Globalization;
using Handspun.Capture.Methods.Runout;
using Handspun.Jobs.Points;
using Handspun.Metrology.Lift;
using Handspun.Metrology.Quantities;
using Handspun.Metrology.Runout;

namespace Handspun.Analysis;

/// <summary>The comment lines at the head of a CSV capture: <c># key = value</c>.</summary>
internal sealed class CsvPreamble
{
    private static readonly string[] Keys = ["point", "unit", "resolution_mm", "error_limit_mm", "index_turns", "setting_mm", "setting_u95_mm", "setting_shown_mm", "larger_reads", "lever_deg", "temperature_c", "angle_of", "checking_lift_mm"];

    private readonly HashSet<string> _seen = [];

    /// <summary>The measuring point; null where none is named.</summary>
    public string? Point { get; private set; }

    /// <summary>Millimetres in one unit of the readings.</summary>
    public double MillimetresPerUnit { get; private set; } = 1;

    /// <summary>The gauge's step, in millimetres; 0 where it is not named.</summary>
    public double ResolutionMillimetres { get; private set; }

    /// <summary>The gauge's largest error, ± this much in millimetres; 0 where it is not named.</summary>
    public double ErrorLimitMillimetres { get; private set; }

    /// <summary>Shaft turns from one index pulse to the next.</summary>
    public double IndexTurns { get; private set; } = 1;

    /// <summary>How the indicator stands.</summary>
    public RunoutSetup Stand { get; private set; } = new();

    /// <summary>The size of the ring, pin, block or micrometer that a gauge was set to, in millimetres; null where it is not named.</summary>
    public double? SettingMillimetres { get; private set; }

    /// <summary>Expanded uncertainty of that size (k = 2), in millimetres; 0 where it is not named.</summary>
    public double SettingU95Millimetres { get; private set; }

    /// <summary>What the gauge showed there, in millimetres; 0 where it is not named, as it was zeroed.</summary>
    public double SettingShownMillimetres { get; private set; }

    /// <summary>Whether the reading falls when the gauge spans more.</summary>
    public bool LargerReadsLower { get; private set; }

    /// <summary>What is said of a gauge that was set to something; null where nothing is named.</summary>
    public PointSetup? Setup
    {
        get
        {
            SettingSetup bare = KindOfPoint.Of(Point) == PointKind.OutsideSize ? new BodySetup() : new BoreSetup();
            return SettingMillimetres is null && !LargerReadsLower ? null : bare with
            {
                SettingMillimetres = SettingMillimetres,
                SettingU95Millimetres = SettingMillimetres is null ? null : SettingU95Millimetres,
                ShownMillimetres = SettingShownMillimetres,
                LargerReadsLower = LargerReadsLower,
            };
        }
    }

    /// <summary>The gauge, as far as it is described.</summary>
    public GaugeTraits Gauge => IndicatorStand.Gauge(
        new() { Resolution = Length.FromMillimetres(ResolutionMillimetres), ErrorLimit = Length.FromMillimetres(ErrorLimitMillimetres) },
        Stand);

    /// <summary>What is asked of a lift curve.</summary>
    public LiftSettings Lift { get; private set; } = new();

    /// <summary>Takes a comment line in.</summary>
    /// <exception cref="CaptureFileException">Its key is unknown or stands twice, or its value does not fit.</exception>
    public void Take(string line, long number)
    {
        if (Pair(line, '=') is not ({ } key, { } value))
        {
            RefuseColon(line, number);
            return;   // a remark
        }

        if (!_seen.Add(key))
        {
            throw CaptureFileException.AtLine(number, $"the key '{key}' stands twice.");
        }

        switch (key)
        {
            case "point":
                Point = value.Length > 0 ? value : throw CaptureFileException.AtLine(number, "'point' names no point.");
                break;
            case "unit":
                MillimetresPerUnit = value switch
                {
                    "mm" => 1,
                    "in" => Length.MillimetresPerInch,
                    _ => throw CaptureFileException.AtLine(number, $"the unit '{value}' is not known: use mm or in."),
                };
                break;
            case "resolution_mm":
                ResolutionMillimetres = Number(key, value, number, least: 0);
                break;
            case "error_limit_mm":
                ErrorLimitMillimetres = Number(key, value, number, least: 0);
                break;
            case "index_turns":
                IndexTurns = Number(key, value, number, least: double.Epsilon);
                break;
            case "lever_deg":
                Stand = Stand with { LeverDegrees = Number(key, value, number, least: 0, below: 90) };
                break;
            case "temperature_c":
                Stand = Stand with { Celsius = Number(key, value, number, least: -40, below: 60) };
                break;
            case "setting_mm":
                SettingMillimetres = Number(key, value, number, least: double.Epsilon);
                break;
            case "setting_u95_mm":
                SettingU95Millimetres = Number(key, value, number, least: 0);
                break;
            case "setting_shown_mm":
                SettingShownMillimetres = Number(key, value, number, least: double.MinValue);
                break;
            case "larger_reads":
                LargerReadsLower = value switch
                {
                    "higher" => false,
                    "lower" => true,
                    _ => throw CaptureFileException.AtLine(number, $"a larger size reads higher or lower, not '{value}'."),
                };
                break;
            case "angle_of":
                Lift = Lift with
                {
                    AngleOf = value switch
                    {
                        "crank" => AngleShaft.Crank,
                        "cam" => AngleShaft.Cam,
                        _ => throw CaptureFileException.AtLine(number, $"the angle of '{value}' is not known: use crank or cam."),
                    },
                };
                break;
            case "checking_lift_mm":
                Lift = Lift with { CheckingLift = Length.FromMillimetres(Number(key, value, number, least: double.Epsilon)) };
                break;
            default:
                throw CaptureFileException.AtLine(number, $"there is no key '{key}': known are {string.Join(", ", Keys)}.");
        }
    }

    /// <summary>Takes a comment line among the rows: a remark may stand there, a key may not, since some rows went by without it.</summary>
    /// <exception cref="CaptureFileException">It is a key.</exception>
    public static void TakeAmongRows(string line, long number)
    {
        if ((Pair(line, '=') ?? Pair(line, ':'))?.Key is { } key && IsKnown(key))
        {
            throw CaptureFileException.AtLine(number, $"the key '{key}' stands among the rows: keys stand at the head, and two captures in one file must be cut apart.");
        }
    }

    // A colon for an equals sign would else pass for a remark, and inches for millimetres.
    private static void RefuseColon(string line, long number)
    {
        if (Pair(line, ':') is ({ } key, { } value) && IsKnown(key))
        {
            throw CaptureFileException.AtLine(number, $"'{key}' needs an equals sign: write '# {key.ToLowerInvariant()} = {value}'.");
        }
    }

    private static (string Key, string Value)? Pair(string line, char sign)
    {
        var text = line.TrimStart('#', ' ', '\t');
        var place = text.IndexOf(sign, StringComparison.Ordinal);
        return place < 0 ? null : (text[..place].Trim(), text[(place + 1)..].Trim());
    }

    private static bool IsKnown(string key) => Keys.Contains(key, StringComparer.OrdinalIgnoreCase);

    private static double Number(string key, string value, long line, double least, double below = double.PositiveInfinity) =>
        double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) && number >= least && number < below
            ? number
            : throw CaptureFileException.AtLine(line, $"'{key} = {value}' is no number that fits.");
}
