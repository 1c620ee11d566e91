namespace Handspun.Gauges.Hid;

/// <summary>Which keys of a keyboard are down, by their numbers on the usage page of keyboards.</summary>
public record struct KeySet
{
    private UInt128 _low;
    private UInt128 _high;

    /// <summary>Adds a key.</summary>
    /// <returns>False where it was in it.</returns>
    public bool Add(byte key)
    {
        var before = Contains(key);
        if (key < 128)
        {
            _low |= UInt128.One << key;
        }
        else
        {
            _high |= UInt128.One << (key - 128);
        }

        return !before;
    }

    /// <summary>Whether a key is down.</summary>
    public readonly bool Contains(byte key) => ((key < 128 ? _low >> key : _high >> (key - 128)) & 1) != 0;
}
