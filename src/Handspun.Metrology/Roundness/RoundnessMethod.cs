using Handspun.Metrology.Runout;

namespace Handspun.Metrology.Roundness;

/// <summary>The four reference circles of a profile (ISO 12181-1): least squares, minimum zone, minimum circumscribed, maximum inscribed.</summary>
public static class RoundnessMethod
{
    private const double FarTooLarge = 1e12;
    private const string TooFew = "A circle needs three points or more; measure the profile at more places.";
    private const string NotNumbers = "The profile holds a value that is not a number, or one far too large; measure it again.";
    private const string Uneven = "The profile does not have as many values in one list as in the other.";
    private const string InLine = "The points lie in one line or at one place; there is no circle through them.";
    private const string NotRound = "The points are too far from a circle to say how far from round it is; look for stray points.";
    private const string NotATurn = "The profile leaves half a turn or more unmeasured; measure it all the way round.";

    /// <summary>The circles of points in a plane. The minimum zone is the best of all centres, within 1e-13 of the radius.</summary>
    /// <remarks>A circle inside that rests on two points across from each other moves aside between them until a third stops it, so its centre
    /// (and the out-of-roundness about it) can jump where a point moves a little; its radius does not.</remarks>
    /// <param name="x">Toward 0 degrees, in millimetres.</param>
    /// <param name="y">Toward 90 degrees, in millimetres; as many as <paramref name="x"/>.</param>
    /// <returns>The circles, or a rejection; the maximum inscribed circle is null where the points do not go round its centre.</returns>
    public static RoundnessResult OfPoints(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        if (Fault(x, y) is { } fault)
        {
            return RoundnessResult.Reject(fault);
        }

        if (PointCloud.Of(x, y) is not { } points || LeastSquaresCircle.Through(points) is not { } fit)
        {
            return RoundnessResult.Reject(InLine);
        }

        if (new CentreSearch(points, CentreGoal.Zone).Find(fit.X, fit.Y) is not { } zone)
        {
            return RoundnessResult.Reject(NotRound);
        }

        var inner = points.Outside(fit.X, fit.Y) < 0 ? new CentreSearch(points, CentreGoal.Inner).Find(fit.X, fit.Y) : null;
        return new()
        {
            Status = RoundnessStatus.Measured,
            LeastSquares = PointCircle.Of(points, new(fit.X, fit.Y, 0, [], []), CircleKind.LeastSquares),
            MinimumZone = PointCircle.Of(points, zone, CircleKind.Zone),
            MinimumCircumscribed = PointCircle.Of(points, SmallestCircle.Around(points), CircleKind.Circumscribed),
            MaximumInscribed = inner is { } found ? PointCircle.Of(points, found, CircleKind.Inscribed) : null,
        };
    }

    /// <summary>The circles of a profile of deviations over one turn, as an indicator shows it.</summary>
    /// <remarks>
    /// The radius is not known, so the limaçon stands for the circle: a centre off by (x, y) is taken out as x·cos a + y·sin a. That
    /// is the eccentric circle to first order, short by e²/2R at most in the height (e the offset of the centre, R the radius), and
    /// each circle is then a linear Chebyshev problem, solved exactly.
    /// </remarks>
    /// <param name="degrees">Angle of each value, in any order, in degrees; no gap of half a turn.</param>
    /// <param name="deviationMillimetres">Height above the dial's zero, in millimetres; as many.</param>
    public static RoundnessResult OfTurn(ReadOnlySpan<double> degrees, ReadOnlySpan<double> deviationMillimetres)
    {
        if (Fault(degrees, deviationMillimetres) is { } fault)
        {
            return RoundnessResult.Reject(fault);
        }

        return TurnCircles.WidestGap(degrees) < 180 - 1e-6
            ? new TurnCircles(degrees, deviationMillimetres).Result(indexed: true)
            : RoundnessResult.Reject(NotATurn);
    }

    /// <summary>The circles of a shaft's fitted profile, everywhere on it and not only at samples, in the sense of <see cref="OfTurn"/>.</summary>
    /// <exception cref="ArgumentNullException">There is no profile.</exception>
    public static RoundnessResult OfProfile(ShaftProfile profile)
    {
        ArgumentNullException.ThrowIfNull(profile);
        return Usable(profile.MeanMillimetres) && profile.Harmonics.All(wave => Usable(wave.Cosine) && Usable(wave.Sine))
            ? SeriesCircles.Of(profile)
            : RoundnessResult.Reject(NotNumbers);
    }

    private static bool Usable(double value) => Math.Abs(value) < FarTooLarge;

    private static string? Fault(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        if (one.Length != other.Length)
        {
            return Uneven;
        }

        if (one.Length < 3)
        {
            return TooFew;
        }

        for (var i = 0; i < one.Length; i++)
        {
            if (!Usable(one[i]) || !Usable(other[i]))
            {
                return NotNumbers;
            }
        }

        return null;
    }
}
