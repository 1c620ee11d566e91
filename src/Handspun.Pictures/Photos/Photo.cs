namespace Handspun.Pictures.Photos;

/// <summary>How a photo is written.</summary>
public enum PhotoFormat
{
    /// <summary>JPEG (ISO/IEC 10918-1).</summary>
    Jpeg,

    /// <summary>PNG (ISO/IEC 15948).</summary>
    Png,
}

/// <summary>A photo that was looked into and is one.</summary>
/// <param name="Format">How it is written.</param>
/// <param name="Width">Pixels across, turned as it is to be seen.</param>
/// <param name="Height">Pixels down, turned as it is to be seen.</param>
/// <param name="Small">The same picture as a JPEG that is quick to load, turned as it is to be seen, without anything else that the camera wrote.</param>
public sealed record Photo(PhotoFormat Format, int Width, int Height, byte[] Small);

/// <summary>What looking into bytes came to: a photo, or what is wrong and what to do.</summary>
/// <param name="Photo">The photo; null where it is none.</param>
/// <param name="Problem">What is wrong, in a sentence or two; null where nothing is.</param>
public readonly record struct PhotoAnswer(Photo? Photo, string? Problem);
