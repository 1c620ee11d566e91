using System.Security.Cryptography;

namespace Handspun.Screens;

/// <summary>What a screen shows the station to be paired: once, and for a few minutes.</summary>
/// <param name="Text">Eight letters and digits, none of which is taken for another.</param>
/// <param name="EndsAt">When it is no longer taken.</param>
internal sealed record PairingCode(string Text, DateTimeOffset EndsAt)
{
    /// <summary>How long a code is taken; our own choice.</summary>
    public static readonly TimeSpan Life = TimeSpan.FromMinutes(5);

    private const string Alphabet = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";   // without 0 and O, 1, I and L
    private const int Length = 8;

    /// <summary>A new one: 31⁸ are possible, close to 40 bits.</summary>
    public static PairingCode New(DateTimeOffset now) => new(RandomNumberGenerator.GetString(Alphabet, Length), now + Life);

    /// <summary>Whether somebody typed this one; blanks, hyphens and small letters do not matter.</summary>
    public bool Is(string typed) =>
        CryptographicOperations.FixedTimeEquals(System.Text.Encoding.UTF8.GetBytes(Text), System.Text.Encoding.UTF8.GetBytes(Plain(typed)));

    private static string Plain(string typed) => string.Concat(typed.Where(char.IsAsciiLetterOrDigit)).ToUpperInvariant();
}
