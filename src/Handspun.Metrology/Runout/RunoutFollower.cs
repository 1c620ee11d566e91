namespace Handspun.Metrology.Runout;

/// <summary>The runout of one capture while it goes on: each look starts where the last one ended, so that looking often costs little.</summary>
/// <remarks>
/// The search for the angle is done anew each time the capture has grown by a fifth, and whenever going on does not fit the
/// readings. The finished capture is measured by <see cref="RunoutMethod.Measure"/>. One for each capture; not for several threads.
/// </remarks>
public sealed class RunoutFollower(GaugeTraits gauge, RunoutSettings settings)
{
    private const double Grown = 1.2;
    private readonly EarlierLook _before = new();
    private int _searched;
    private int _marks;

    /// <summary>What the capture says so far; it holds all that earlier looks saw, and what came since.</summary>
    public RunoutResult Look(RotationCapture capture)
    {
        ArgumentNullException.ThrowIfNull(capture);
        var readings = capture.Seconds.Length;
        if (readings > Grown * _searched || readings < _searched || capture.MarkSeconds.Length != _marks)
        {
            (_before.Fit, _searched, _marks) = (null, readings, capture.MarkSeconds.Length);
        }

        return RunoutMethod.Look(capture, gauge, settings, _before);
    }
}
