namespace Handspun.Metrology.Lift;

/// <summary>Where the two flanks of a lobe pass a height, in turns of the cam, and how surely.</summary>
/// <param name="Opening">Where it rises through the height.</param>
/// <param name="Closing">Where it falls through the height; less than a turn after <paramref name="Opening"/>.</param>
/// <param name="OpeningVariance">Variance of the first, square turns.</param>
/// <param name="ClosingVariance">Variance of the second.</param>
/// <param name="Together">Their covariance.</param>
internal readonly record struct LobeFlanks(double Opening, double Closing, double OpeningVariance, double ClosingVariance, double Together)
{
    private const int Steps = 720;

    /// <summary>Midway between both.</summary>
    public double Middle => (Opening + Closing) / 2;

    /// <summary>Variance of <see cref="Middle"/>.</summary>
    public double MiddleVariance => (OpeningVariance + ClosingVariance + 2 * Together) / 4;

    /// <summary>Variance of the way from opening to closing.</summary>
    public double DurationVariance => Math.Max(0, OpeningVariance + ClosingVariance - 2 * Together);

    /// <summary>The first places on both sides of the top at which the lift is no more than a height; null where there is none on a side.</summary>
    /// <param name="fit">The lobe.</param>
    /// <param name="circle">Its base circle.</param>
    /// <param name="top">Where the lobe is highest, in turns.</param>
    /// <param name="lift">The height above the base circle, in millimetres.</param>
    /// <param name="liftDoubt">Standard uncertainty of a lift, gauge and base circle: it moves both flanks, one forward and one back.</param>
    public static LobeFlanks? Find(LiftFit fit, BaseCircle circle, double top, double lift, double liftDoubt)
    {
        double Above(double turns) => fit.At(turns).Height - circle.At(turns).Height - lift;
        if (Crossing(Above, top, -1) is not { } opening || Crossing(Above, top, 1) is not { } closing)
        {
            return null;
        }

        // A height that is off by h moves a flank by h over its slope (JCGM 100:2008, 5.1.3).
        var (rise, fall) = (fit.At(opening).Slope, fit.At(closing).Slope);
        if (rise <= 0 || fall >= 0)
        {
            return null;
        }

        var gauge = liftDoubt * liftDoubt;
        return new(
            opening,
            closing,
            (fit.CovarianceAt(opening, opening) + gauge) / (rise * rise),
            (fit.CovarianceAt(closing, closing) + gauge) / (fall * fall),
            (fit.CovarianceAt(opening, closing) + gauge) / (rise * fall));
    }

    private static double? Crossing(Func<double, double> above, double top, int way)
    {
        for (var i = 1; i <= Steps / 2; i++)
        {
            var outside = top + (double)way * i / Steps;
            if (above(outside) <= 0)
            {
                var inside = top + way * (i - 1.0) / Steps;
                for (var halving = 0; halving < 40; halving++)
                {
                    var middle = (inside + outside) / 2;
                    (inside, outside) = above(middle) > 0 ? (middle, outside) : (inside, middle);
                }

                return (inside + outside) / 2;
            }
        }

        return null;
    }
}
