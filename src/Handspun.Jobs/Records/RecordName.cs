using System.Globalization;

namespace Handspun.Jobs.Records;

/// <summary>Names for records.</summary>
public static class RecordName
{
    /// <summary>A new one. The time makes it readable and sortable; the tail keeps two stations that share a store apart.</summary>
    public static string New(TimeProvider time) => string.Create(
        CultureInfo.InvariantCulture,
        $"{time.GetUtcNow():yyyyMMdd-HHmmss}-{Guid.NewGuid().ToString("N")[..6]}");
}
