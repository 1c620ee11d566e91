namespace Handspun.Pages.Plans;

/// <summary>A part in the list of a job.</summary>
/// <param name="Id">The part in addresses.</param>
/// <param name="Title">What it is.</param>
/// <param name="Place">Where it sits; empty where there is only one.</param>
/// <param name="Faced">How it sat; null where nobody noted it.</param>
/// <param name="Choice">What becomes of it, as a code; null where nobody has decided.</param>
/// <param name="ChoiceWord">The same in words.</param>
/// <param name="Why">Why and by whom; null where nobody has decided.</param>
public sealed record PartLine(string Id, string Title, string Place, string? Faced, string? Choice, string? ChoiceWord, string? Why)
{
    /// <summary>Whether nobody has noted or decided anything yet.</summary>
    public bool IsUntouched => Faced is null && Choice is null;

    /// <summary>What it is and where it sits.</summary>
    public string Name => Place.Length == 0 ? Title : $"{Title}, {Place}";
}

/// <summary>The page of one part.</summary>
public sealed record PartView
{
    /// <summary>The job's number.</summary>
    public required string Job { get; init; }

    /// <summary>Year, make and model in one line.</summary>
    public required string Bike { get; init; }

    /// <summary>The part.</summary>
    public required PartLine Part { get; init; }

    /// <summary>What is to be noted of the way it faced.</summary>
    public required string Faces { get; init; }

    /// <summary>Its photos.</summary>
    public required PhotosView Photos { get; init; }

    /// <summary>What was found on it.</summary>
    public required IReadOnlyList<FindingView> Findings { get; init; }

    /// <summary>What was done, oldest first.</summary>
    public required IReadOnlyList<HistoryLine> History { get; init; }

    /// <summary>The job's version that the page shows.</summary>
    public required int Version { get; init; }

    /// <summary>What was typed and what is wrong.</summary>
    public required FormState Form { get; init; }
}

/// <summary>The page with all parts of a job.</summary>
public sealed record PartsView
{
    /// <summary>The job's number.</summary>
    public required string Job { get; init; }

    /// <summary>Year, make and model in one line.</summary>
    public required string Bike { get; init; }

    /// <summary>The parts, in order.</summary>
    public required IReadOnlyList<PartLine> Parts { get; init; }

    /// <summary>The job's version that the page shows.</summary>
    public required int Version { get; init; }

    /// <summary>What was typed and what is wrong.</summary>
    public required FormState Form { get; init; }
}
