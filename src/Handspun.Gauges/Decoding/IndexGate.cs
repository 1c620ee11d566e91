namespace Handspun.Gauges.Decoding;

/// <summary>Keeps the bouncing of an index contact out, live and on replay alike.</summary>
/// <param name="debounce">So long after a pulse that counted, a further one does not.</param>
public sealed class IndexGate(TimeSpan debounce)
{
    private TimeSpan? _counted;

    /// <summary>Whether a pulse counts.</summary>
    /// <param name="at">When it came; never before an earlier one.</param>
    public bool Admits(TimeSpan at)
    {
        if (at - _counted < debounce)
        {
            return false;
        }

        _counted = at;
        return true;
    }
}
