namespace Handspun.Simulation.Speech;

/// <summary>What a simulated indicator has to say at one moment.</summary>
/// <param name="Millimetres">The value, whatever unit it is shown in.</param>
/// <param name="Inch">Whether it is set to inches.</param>
/// <param name="BatteryLow">Whether its battery is nearly empty.</param>
/// <param name="Index">Whether the index has passed since the frame before.</param>
public readonly record struct Shown(double Millimetres, bool Inch = false, bool BatteryLow = false, bool Index = false)
{
    private const double MillimetresPerInch = 25.4;

    /// <summary>The value in the unit that it is set to.</summary>
    public double InUnit => Inch ? Millimetres / MillimetresPerInch : Millimetres;

    /// <summary>The value as a whole number of steps.</summary>
    /// <param name="millimetreStep">The step in millimetres.</param>
    /// <param name="inchStep">The step in inches.</param>
    public int Counts(double millimetreStep, double inchStep) => (int)Math.Round(InUnit / (Inch ? inchStep : millimetreStep));
}
