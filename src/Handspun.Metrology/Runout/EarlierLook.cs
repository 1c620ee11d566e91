namespace Handspun.Metrology.Runout;

/// <summary>What a look at a capture that goes on leaves for the next one.</summary>
internal sealed class EarlierLook
{
    /// <summary>What was found; null where nothing was that the next look could go on from, and it searches.</summary>
    public ProfileFit? Fit { get; set; }

    /// <summary>The runout of each whole turn so far; not judged anew before the next search.</summary>
    public IReadOnlyList<double> TirByTurnMillimetres { get; set; } = [];
}
