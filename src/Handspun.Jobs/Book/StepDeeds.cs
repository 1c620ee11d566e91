using Handspun.Metrology.Decision;

namespace Handspun.Jobs.Book;

/// <summary>A check was seen to, or a finding step was looked at.</summary>
/// <param name="Words">What is to be remembered of it, such as the manual's page; null where nothing is.</param>
public sealed record Ticked(string? Words) : Deed;

/// <summary>A tick was taken back.</summary>
/// <param name="Why">The reason; null where nobody gave one.</param>
public sealed record Unticked(string? Why) : Deed;

/// <summary>A step is left out.</summary>
/// <param name="Why">The reason.</param>
public sealed record Skipped(string Why) : Deed;

/// <summary>A step that was left out is to be done after all.</summary>
/// <param name="Why">The reason; null where nobody gave one.</param>
public sealed record TakenUpAgain(string? Why) : Deed;

/// <summary>Somebody decided at a gate that would not open by itself.</summary>
/// <param name="GoOn">Whether the job goes on; false stops it here.</param>
/// <param name="Why">The reason.</param>
/// <param name="Record">The record that counted then; null where there was none. The decision holds for that one.</param>
/// <param name="Verdict">Its verdict against the limit of that moment; null where there was none.</param>
/// <param name="Result">What the result said then, in a sentence.</param>
public sealed record GateDecided(bool GoOn, string Why, string? Record, Verdict? Verdict, string Result) : Deed;
