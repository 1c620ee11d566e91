using Handspun.Simulation;
using Handspun.Simulation.PushPull;

namespace Handspun.Accuracy.ByHand;

/// <summary>One class of captures that need no angle: pushes and pulls, or rocks.</summary>
/// <param name="Name">What the table calls it.</param>
/// <param name="Draw">Makes the capture of a seed.</param>
/// <param name="Measure">What the method makes of it; null where it gives no answer.</param>
internal sealed record PlainKind(string Name, Func<int, DrawnPlainCapture> Draw, Func<DrawnPlainCapture, PlainAnswer?> Measure);

/// <summary>A capture and the gauge that it was drawn with.</summary>
internal sealed record DrawnPlainCapture(PlainCapture Capture, Indicator Indicator);

/// <summary>What a method found; lengths in millimetres.</summary>
internal readonly record struct PlainAnswer(double Millimetres, double U95Millimetres, int Cycles);
