using Handspun.Jobs.Lengths;
using Handspun.Metrology.Decision;
using Handspun.Metrology.Quantities;

namespace Handspun.Pictures.Lift;

/// <summary>What the picture of both lobes of a cylinder is drawn from.</summary>
public sealed record TimingPictureContent
{
    /// <summary>What was measured on which machine.</summary>
    public required string Title { get; init; }

    /// <summary>Job and date. May be empty.</summary>
    public string Subtitle { get; init; } = "";

    /// <summary>The lobe separation in words, with its uncertainty.</summary>
    public required string Separation { get; init; }

    /// <summary>The result in a sentence or two.</summary>
    public required string Sentence { get; init; }

    /// <summary>The intake lobe.</summary>
    public required Lobe Intake { get; init; }

    /// <summary>The exhaust lobe.</summary>
    public required Lobe Exhaust { get; init; }

    /// <summary>Whether zero is top dead centre; else it is the middle between both lobes.</summary>
    public required bool FromTop { get; init; }

    /// <summary>The lift that opening and closing count from.</summary>
    public required Length CheckingLift { get; init; }

    /// <summary>Whether all lines of the card agree; null where there is no card.</summary>
    public Verdict? Verdict { get; init; }

    /// <summary>The unit of every length in the picture.</summary>
    public LengthUnit Unit { get; init; }
}
