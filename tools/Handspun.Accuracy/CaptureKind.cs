using Handspun.Simulation;

namespace Handspun.Accuracy;

/// <summary>One class of captures: what the hand, the gauge and the aid are like.</summary>
/// <param name="Name">What the table calls it.</param>
/// <param name="Draw">Makes the capture of a seed.</param>
internal sealed record CaptureKind(string Name, Func<int, DrawnCapture> Draw);

/// <summary>A capture with all that was drawn for it.</summary>
internal sealed record DrawnCapture(SimulatedCapture Capture, ShaftShape Shape, Indicator Indicator, AngleAid Aid);
