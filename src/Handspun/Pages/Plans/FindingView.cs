namespace Handspun.Pages.Plans;

/// <summary>A finding.</summary>
/// <param name="Id">Its number in addresses.</param>
/// <param name="Text">What was found, in a line.</param>
/// <param name="Signs">What was seen, in words.</param>
/// <param name="Place">Where; null where nobody said.</param>
/// <param name="Words">In words of one's own; empty where nobody wrote any.</param>
/// <param name="Step">The step in which it was found; null where it was found besides.</param>
/// <param name="Part">The part that it is about; null where it is about none.</param>
/// <param name="Foot">Who noted it and when.</param>
/// <param name="Photos">Its photos.</param>
public sealed record FindingView(
    string Id, string Text, IReadOnlyList<string> Signs, string? Place, string Words, PlaceLink? Step, PlaceLink? Part, string Foot, PhotosView Photos);

/// <summary>Something on another page.</summary>
/// <param name="Address">The page.</param>
/// <param name="Text">What it is called.</param>
public sealed record PlaceLink(string Address, string Text);

/// <summary>The photos of one thing, and where more are sent.</summary>
/// <param name="Job">The job's number.</param>
/// <param name="About">What they belong to, such as <c>finding/3</c>.</param>
/// <param name="Back">The page to go back to.</param>
/// <param name="Photos">Those that are there, oldest first.</param>
public sealed record PhotosView(string Job, string About, string Back, IReadOnlyList<PhotoView> Photos);

/// <summary>One photo.</summary>
/// <param name="Address">The picture as it came.</param>
/// <param name="Small">The small one.</param>
/// <param name="Caption">What it shows, with who took it when.</param>
/// <param name="Width">Pixels across.</param>
/// <param name="Height">Pixels down.</param>
public sealed record PhotoView(string Address, string Small, string Caption, int Width, int Height);

/// <summary>What can be picked when something is noted.</summary>
/// <param name="Job">The job's number.</param>
/// <param name="Step">The step; empty for none.</param>
/// <param name="Places">Where it can be; empty lets it be typed.</param>
/// <param name="Parts">The parts of the job.</param>
/// <param name="Version">The job's version that the page shows.</param>
/// <param name="Form">What was typed and what is wrong.</param>
public sealed record FindingFormView(string Job, string Step, IReadOnlyList<string> Places, IReadOnlyList<PartLine> Parts, int Version, FormState Form);
