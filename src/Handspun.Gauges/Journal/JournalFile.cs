using System.IO.Compression;

namespace Handspun.Gauges.Journal;

/// <summary>A journal's file: plain while it grows, packed by gzip (RFC 1952) when it is closed for good. Which it is shows in its first two bytes.</summary>
public static class JournalFile
{
    /// <summary>What a packed journal's name ends with.</summary>
    public const string PackedEnding = ".gz";

    private const int FirstOfPacked = 0x1F;
    private const int SecondOfPacked = 0x8B;

    /// <summary>Opens a journal's text, also one that is still being written.</summary>
    /// <exception cref="IOException">It is not there or cannot be read.</exception>
    public static Stream OpenText(string path)
    {
        var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        try
        {
            var packed = file.ReadByte() == FirstOfPacked && file.ReadByte() == SecondOfPacked;
            file.Position = 0;
            return packed ? new GZipStream(file, CompressionMode.Decompress) : file;
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <summary>Packs a file into another, which is whole on the disk when this returns and replaces one of the same name; the plain one is deleted.</summary>
    internal static void Pack(string plain, string packed)
    {
        var part = packed + ".part";
        using (var from = File.OpenRead(plain))
        using (var into = File.Create(part))
        {
            using (var packing = new GZipStream(into, CompressionLevel.Optimal, leaveOpen: true))
            {
                from.CopyTo(packing);
            }

            into.Flush(flushToDisk: true);
        }

        File.Move(part, packed, overwrite: true);
        File.Delete(plain);
    }
}
