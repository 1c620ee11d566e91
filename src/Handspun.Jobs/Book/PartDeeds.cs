using Handspun.Jobs.Limits;

namespace Handspun.Jobs.Book;

/// <summary>A part joined the job's list beyond those of the plan.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Place">Where it sits; empty where there is only one.</param>
public sealed record PartAdded(string Title, string Place) : Deed;

/// <summary>How a part sat before it came out was noted.</summary>
/// <param name="Faced">Which way it faced, in words.</param>
public sealed record PartFaced(string Faced) : Deed;

/// <summary>Somebody decided what becomes of a part.</summary>
/// <param name="Choice">What becomes of it.</param>
/// <param name="Why">The reason.</param>
public sealed record PartDecided(PartChoice Choice, string Why) : Deed;

/// <summary>A point got a limit, or its limit was confirmed.</summary>
/// <param name="Limit">The limit from then on.</param>
/// <param name="Typed">The bounds as they were typed, with their unit.</param>
public sealed record LimitSet(Limit Limit, string Typed) : Deed;
