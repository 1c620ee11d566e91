namespace Handspun.Pages;

/// <summary>What is said of a point before it is measured, and the form to say it.</summary>
/// <param name="Title">What it is about.</param>
/// <param name="Sentence">What stands there now.</param>
/// <param name="IsSaid">Whether anything was said yet.</param>
/// <param name="Fields">What is typed, in order.</param>
public sealed record SetupView(string Title, string Sentence, bool IsSaid, IReadOnlyList<SetupFieldView> Fields);

/// <summary>One thing to type or to choose.</summary>
/// <param name="Name">Its key where it is sent.</param>
/// <param name="Label">What it is called.</param>
/// <param name="Value">What stands there now.</param>
/// <param name="Hint">How to write it; null where that is plain.</param>
/// <param name="Choices">What to choose from; null where it is typed.</param>
public sealed record SetupFieldView(string Name, string Label, string Value, string? Hint, IReadOnlyList<Choice>? Choices);
