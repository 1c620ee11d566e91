using System.Diagnostics.CodeAnalysis;

namespace Handspun.Gauges.Hid;

/// <summary>Where a device has what a profile looks for in its reports.</summary>
public sealed class HidReportLayout
{
    private HidReportLayout(FieldPlace value, long least, long most, FieldScale? scale, IReadOnlyList<FlagPlace> flags) =>
        (Value, Least, Most, Scale, Flags) = (value, least, most, scale, flags);

    /// <summary>Where the value lies.</summary>
    public FieldPlace Value { get; }

    /// <summary>The smallest count that is a value.</summary>
    public long Least { get; }

    /// <summary>The largest count that is a value.</summary>
    public long Most { get; }

    /// <summary>What the counts stand for; null where the profile says it.</summary>
    public FieldScale? Scale { get; }

    /// <summary>Where the flags lie; one flag may be in more than one place.</summary>
    public IReadOnlyList<FlagPlace> Flags { get; }

    /// <summary>Where a flag lies: it is up when the counts there are <paramref name="When"/>.</summary>
    /// <param name="Place">The place.</param>
    /// <param name="When">The counts.</param>
    /// <param name="Which">The flag's place in the profile's list.</param>
    /// <param name="Flag">The flag.</param>
    public readonly record struct FlagPlace(FieldPlace Place, long When, int Which, HidFlag Flag);

    /// <summary>Finds all that a profile looks for.</summary>
    /// <param name="format">What the profile looks for.</param>
    /// <param name="descriptor">What the device says of its reports; null where it says nothing.</param>
    /// <param name="layout">Where it is.</param>
    /// <returns>False where the device does not have it, or has a usage in more than one place, so that nobody can tell which is meant.</returns>
    public static bool TryFind(HidReportFormat format, ReportDescriptor? descriptor, [NotNullWhen(true)] out HidReportLayout? layout)
    {
        layout = null;
        return format.Place is { } place
            ? TryPlace(format, place, descriptor, out layout)
            : descriptor is not null && format.Usage is { } usage && TryUsage(format, usage, descriptor, out layout);
    }

    private static bool TryPlace(HidReportFormat format, FieldPlace place, ReportDescriptor? descriptor, [NotNullWhen(true)] out HidReportLayout? layout)
    {
        var flags = format.Flags.Select((flag, which) => new FlagPlace(new(place.ReportId, flag.Number, 1, false), 1, which, flag)).ToList();
        layout = new(place, long.MinValue, long.MaxValue, null, flags);
        return descriptor is null || flags.Select(flag => flag.Place).Append(place).All(wanted => IsIn(descriptor, wanted));
    }

    private static bool IsIn(ReportDescriptor descriptor, FieldPlace place) =>
        place.BitOffset + place.BitSize <= descriptor.BitsOf(ReportKind.Input, place.ReportId) && (place.ReportId != 0) == descriptor.NumbersReports;

    private static bool TryUsage(HidReportFormat format, HidUsage usage, ReportDescriptor descriptor, [NotNullWhen(true)] out HidReportLayout? layout)
    {
        layout = null;
        var fields = descriptor.Fields
            .Where(field => field is { Kind: ReportKind.Input, IsArray: false, IsRelative: false } && field.Usage == usage)
            .Where(field => format.ReportId == 0 || field.ReportId == format.ReportId)
            .Where(field => format.InCounts || FieldScale.TryFromField(field, out _))
            .ToList();
        var flags = format.Flags.SelectMany((flag, which) => Buttons(descriptor, flag, which)).ToList();
        if (fields.Count != 1 || flags.DistinctBy(flag => flag.Which).Count() != format.Flags.Count)
        {
            return false;
        }

        var (field, scaled) = (fields[0], FieldScale.TryFromField(fields[0], out var scale));
        layout = new(FieldPlace.Of(field), field.LogicalMinimum, field.LogicalMaximum, scaled && !format.InCounts ? scale : null, flags);
        return true;
    }

    private static IEnumerable<FlagPlace> Buttons(ReportDescriptor descriptor, HidFlag flag, int which)
    {
        var button = new HidUsage(HidUsage.ButtonPage, (ushort)flag.Number);
        foreach (var field in descriptor.Fields.Where(field => field.Kind == ReportKind.Input && field.PlaceOf(button) >= 0))
        {
            var when = field.IsArray ? field.LogicalMinimum + field.PlaceOf(button) : 1;
            for (var slot = 0; slot < field.Count; slot++)
            {
                yield return new(FieldPlace.Of(field, slot), when, which, flag);
            }
        }
    }
}
