using Handspun.Metrology.Fitting;

namespace Handspun.Metrology.Runout;

/// <summary>A profile fitted to the readings of a trace, however the angle became known.</summary>
internal sealed record ProfileFit
{
    /// <summary>Waves in the profile.</summary>
    public required int Harmonics { get; init; }

    /// <summary>Mean, then cosine and sine of each wave, then the drift's coefficients; millimetres.</summary>
    public required double[] Series { get; init; }

    /// <summary>Order of the drift polynomial.</summary>
    public int DriftOrder => Series.Length - 1 - 2 * Harmonics;

    /// <summary>Covariance of <see cref="Series"/>, full square.</summary>
    public required double[] Covariance { get; init; }

    /// <summary>What the gauge's rounding adds to it, full square.</summary>
    public required double[] Rounding { get; init; }

    /// <summary>The angle at a moment, in turns.</summary>
    public required Func<double, double> TurnsAt { get; init; }

    /// <summary>The last moment that was fitted, in seconds.</summary>
    public required double End { get; init; }

    /// <summary>The angle of each reading of the trace, in turns.</summary>
    public required double[] Turns { get; init; }

    /// <summary>Reading minus fit, in millimetres.</summary>
    public required double[] Residuals { get; init; }

    /// <summary>Weight of each reading, 0 to 1.</summary>
    public required double[] Weights { get; init; }

    /// <summary>Standard deviation of the residuals, in millimetres.</summary>
    public required double Sigma { get; init; }

    /// <summary>How stiff the angle was held; 0 where it was told.</summary>
    public double Smoothness { get; init; }

    /// <summary>Whether an encoder told every angle.</summary>
    public bool IsAngleTold => Smoothness == 0;

    /// <summary>What told the angle of some moments; empty where nothing did.</summary>
    public IReadOnlyList<AngleAnchor> Anchors { get; init; } = [];

    /// <summary>Whether index pulses had to be counted anew because some were missed or came twice.</summary>
    public bool IndexRecounted { get; init; }

    /// <summary>Whether every number came out finite; contents that are no measurement at all may keep a fit from it.</summary>
    public bool IsFinite => double.IsFinite(Sigma) && double.IsFinite(TurnsSeen) && Harmonics > 0
        && Series.All(double.IsFinite) && Covariance.All(double.IsFinite) && Rounding.All(double.IsFinite);

    /// <summary>Turns from the first reading of the trace to the last.</summary>
    public double TurnsSeen => Turns.Length == 0 ? 0 : Math.Abs(Turns[^1] - Turns[0]);

    /// <summary>The height of the profile at an angle in turns, its mean included and the drift not; millimetres.</summary>
    public double HeightAt(double turns) => Series[0] + ProfileExtremes.At(Series, Harmonics, 1, turns).Height;

    /// <summary>The drift at a moment that is this far along the trace, from −1 to 1; millimetres about its mean.</summary>
    public double Drift(double course)
    {
        var drift = 0.0;
        for (var d = 1 + 2 * Harmonics; d < Series.Length; d++)
        {
            drift += Series[d] * (d == 1 + 2 * Harmonics ? course : (3 * course * course - 1) / 2);
        }

        return drift;
    }
}
