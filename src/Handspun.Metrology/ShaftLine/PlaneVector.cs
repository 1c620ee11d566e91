namespace Handspun.Metrology.ShaftLine;

/// <summary>A vector square to the shaft with its covariance, carried along to first order (JCGM 100:2008, 5.1 and 5.2).</summary>
internal readonly record struct PlaneVector(double X, double Y, double Xx, double Xy, double Yy)
{
    /// <summary>Length and direction; the deviation of the direction acts square to it.</summary>
    public static PlaneVector FromPolar(double length, double deviation, double degrees, double degreesDeviation)
    {
        var (s, c) = Math.SinCos(degrees * Math.PI / 180);
        var (along, aside) = (deviation * deviation, Math.Pow(length * degreesDeviation * Math.PI / 180, 2));
        return new(length * c, length * s, along * c * c + aside * s * s, (along - aside) * s * c, along * s * s + aside * c * c);
    }

    public double Length => Math.Sqrt(X * X + Y * Y);

    public double Degrees => Math.Atan2(Y, X) * 180 / Math.PI;

    /// <summary>Standard deviation of the length. Of a vector that is not sure to be one, the first order says nothing and the greatest in any direction stands for it.</summary>
    public double Deviation
    {
        get
        {
            var square = X * X + Y * Y;
            var greatest = (Xx + Yy) / 2 + Math.Sqrt(Math.Pow((Xx - Yy) / 2, 2) + Xy * Xy);
            return Math.Sqrt(Math.Max(0, square > 4 * greatest ? (X * X * Xx + 2 * X * Y * Xy + Y * Y * Yy) / square : greatest));
        }
    }

    /// <summary>Standard deviation of the direction in degrees; 180 of no vector at all.</summary>
    public double DegreesDeviation
    {
        get
        {
            var square = X * X + Y * Y;
            return square > 0 ? Math.Sqrt(Math.Max(0, Y * Y * Xx - 2 * X * Y * Xy + X * X * Yy)) / square * 180 / Math.PI : 180;
        }
    }

    /// <summary>The sum of two vectors that do not depend on each other.</summary>
    public PlaneVector Plus(PlaneVector other) => new(X + other.X, Y + other.Y, Xx + other.Xx, Xy + other.Xy, Yy + other.Yy);

    /// <summary>The difference of two vectors that do not depend on each other.</summary>
    public PlaneVector Minus(PlaneVector other) => new(X - other.X, Y - other.Y, Xx + other.Xx, Xy + other.Xy, Yy + other.Yy);

    /// <summary>The vector times a factor that has a deviation of its own.</summary>
    public PlaneVector Times(double factor, double deviation)
    {
        var (f, u) = (factor * factor, deviation * deviation);
        return new(factor * X, factor * Y, f * Xx + u * X * X, f * Xy + u * X * Y, f * Yy + u * Y * Y);
    }
}
