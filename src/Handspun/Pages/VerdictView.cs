namespace Handspun.Pages;

/// <summary>What a result or a point says at a glance. Shown as a shape and a word; the colour only repeats it.</summary>
public enum VerdictView
{
    /// <summary>No verdict: no limit is set, or the spin gave no result.</summary>
    None,

    /// <summary>Within the limit.</summary>
    Within,

    /// <summary>Over the limit.</summary>
    Over,

    /// <summary>Too close to call.</summary>
    Undecided,
}
