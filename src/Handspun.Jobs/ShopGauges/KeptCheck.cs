using Handspun.Metrology.GaugeStudy;

namespace Handspun.Jobs.ShopGauges;

/// <summary>One check of a gauge against something whose size is known. It is never changed after it was made.</summary>
public sealed class KeptCheck
{
    /// <summary>The store's key.</summary>
    public int Id { get; init; }

    /// <summary>The gauge that it belongs to.</summary>
    public int ShopGaugeId { get; init; }

    /// <summary>When it was made.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The last day on which it still counts.</summary>
    public required DateOnly DueOn { get; init; }

    /// <summary>What was typed of it.</summary>
    public required CheckSheet Sheet { get; init; }

    /// <summary>What the gauge shows minus what is true, in millimetres.</summary>
    public required double ErrorMillimetres { get; init; }

    /// <summary>Its expanded uncertainty (k = 2), in millimetres.</summary>
    public required double ErrorU95Millimetres { get; init; }

    /// <summary>Standard deviation of the readings, in millimetres.</summary>
    public required double RepeatabilityMillimetres { get; init; }

    /// <summary>What followed for the gauge on the day of the check.</summary>
    public required GaugeStanding Standing { get; init; }

    /// <summary>Works a sheet out.</summary>
    /// <param name="sheet">What was typed; it must have no problems.</param>
    /// <param name="at">When the check was made.</param>
    /// <param name="today">The day of the check, in the shop.</param>
    /// <param name="everyDays">Days until the gauge is due again, where the sheet names no day.</param>
    /// <exception cref="ArgumentException">The sheet has problems.</exception>
    public static KeptCheck Of(CheckSheet sheet, DateTimeOffset at, DateOnly today, int everyDays)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        if (sheet.Problems(today).FirstOrDefault() is { } problem)
        {
            throw new ArgumentException(problem, nameof(sheet));
        }

        var due = sheet.DueOn ?? today.AddDays(everyDays);
        var check = sheet.Work(due, today);
        return new()
        {
            At = at,
            DueOn = due,
            Sheet = sheet,
            ErrorMillimetres = check.Error.Value.Millimetres,
            ErrorU95Millimetres = check.Error.U95.Millimetres,
            RepeatabilityMillimetres = check.Repeatability.Millimetres,
            Standing = check.Standing,
        };
    }

    /// <summary>What a record keeps of it.</summary>
    public LastCheck ToLastCheck() => new()
    {
        At = At,
        DueOn = DueOn,
        By = Sheet.By,
        Against = Sheet.Against,
        ErrorMillimetres = ErrorMillimetres,
        ErrorU95Millimetres = ErrorU95Millimetres,
        ErrorLimitMillimetres = Sheet.ErrorLimitMillimetres,
        Found = GaugeStandingText.Code(Standing),
    };
}
