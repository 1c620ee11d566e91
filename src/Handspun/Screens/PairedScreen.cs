namespace Handspun.Screens;

/// <summary>A screen that was paired.</summary>
/// <param name="Number">What it is called: 1, 2, 3 and so on.</param>
/// <param name="Hash">SHA-256 of what the screen keeps, in hexadecimal digits. What it keeps is 128 random bits, so nobody finds it from this.</param>
/// <param name="From">The address it had when it was paired.</param>
/// <param name="PairedAt">When.</param>
internal sealed record PairedScreen(int Number, string Hash, string From, DateTimeOffset PairedAt);
