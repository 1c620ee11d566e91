namespace Handspun.Metrology.Runout;

/// <summary>The runout of a shaft that a hand turns, from an indicator's readings alone or with an index, marks or an encoder.</summary>
public static class RunoutMethod
{
    /// <summary>Measures the runout. The same for a finished capture, a replayed one, and one that still goes on.</summary>
    public static RunoutResult Measure(RotationCapture capture, GaugeTraits gauge, RunoutSettings settings) =>
        throw new NotImplementedException();
}
