using System.Text.Json;
using Handspun.Broker;
using Handspun.Capture.Bays;
using Handspun.Capture.Methods;
using Handspun.Gauges.Listening;
using Handspun.Gauges.Readings;
using Handspun.Jobs.Cautions;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Points;
using Handspun.Jobs.ShopGauges;
using Handspun.Jobs.Standing;
using Handspun.Jobs.Store;
using Handspun.Setups;
using Handspun.Station;
using Handspun.Wire;

namespace Handspun.Bays;

/// <summary>Where a bay is told what to measure, and asked how it stands. What its gauges were told is kept, so that they go on after a restart.</summary>
internal sealed class BayDesk(
    Bay bay,
    JobStore store,
    GaugeBook book,
    GaugeRoster gauges,
    GaugeClock clock,
    GaugePublisher published,
    StationOptions options,
    BaySteps steps,
    ILogger<BayDesk> logger)
{
    /// <summary>Gives a gauge of the bay a point of a job.</summary>
    /// <param name="wish">What is to be measured, and with what.</param>
    /// <param name="cautionsRead">Whether somebody says now that the cautions were read and followed.</param>
    /// <param name="cancellationToken">Stops waiting.</param>
    /// <exception cref="JobNotFoundException">There is no such job or point.</exception>
    /// <exception cref="BayRefusalException">The cautions were not read, the point is not measured in the bay, or there is no such gauge.</exception>
    public async Task AssignAsync(BayWish wish, bool cautionsRead, CancellationToken cancellationToken)
    {
        var found = await store.GetAsync(wish.Job, cancellationToken);
        var place = JobStore.PointIn(found, wish.Point);
        if (PointHold.Of(found, place) is { } reason)
        {
            throw new BayRefusalException(reason);
        }

        var method = CaptureMethods.Find(place.Kind) ?? throw new BayRefusalException($"{place.Title} is not measured in the bay: type what the tool shows on the job's page.");
        var name = PickGauge(wish.Gauge);
        if (found.CautionsReadAt is null)
        {
            if (!cautionsRead)
            {
                throw new BayRefusalException("Before the first spin of a job, read its cautions and say so (cautions_read: true). " + string.Join(" ", RunoutCautions.Sentences));
            }

            await store.CautionsReadAsync(wish.Job, cancellationToken);
        }

        bay.Assign(await TaskOfAsync(found, place, name, wish.Wanted ?? method.UsuallyWanted, cancellationToken));
        await KeepAsync(cancellationToken);
    }

    /// <summary>Takes a gauge on to another point of its job. A bore gauge is still set to its ring, and starts at the same place: the point takes that over, unless something was said of it.</summary>
    /// <param name="task">What the gauge measured.</param>
    /// <param name="point">The point that comes next.</param>
    /// <param name="cancellationToken">Stops waiting.</param>
    /// <exception cref="JobNotFoundException">There is no such job or point any more.</exception>
    /// <exception cref="BayRefusalException">The point cannot be measured now.</exception>
    public async Task GoOnAsync(BayTask task, string point, CancellationToken cancellationToken)
    {
        if (task.Setup is BoreSetup setting && JobStore.PointIn(await store.GetAsync(task.Job, cancellationToken), point).Setup is null)
        {
            await store.SetUpAsync(task.Job, point, setting, cancellationToken);
        }

        await AssignAsync(new BayWish(task.Job, point, task.Gauge.ToString()), cautionsRead: false, cancellationToken);
    }

    /// <summary>Lets a gauge's point go; every point where no gauge is named.</summary>
    public async Task StandDownAsync(GaugeName? gauge, CancellationToken cancellationToken)
    {
        bay.StandDown(gauge);
        await KeepAsync(cancellationToken);
    }

    /// <summary>Lets a gauge stay at its point where a step is to come, or takes it back to the point before where one was taken.</summary>
    /// <exception cref="BayRefusalException">No step is to come, and none was taken.</exception>
    public async Task BackAsync(GaugeName? gauge, CancellationToken cancellationToken)
    {
        var task = bay.View(gauge).Task;
        if (steps.Coming(task) is { } step)
        {
            steps.Stay(step.From.Gauge);
        }
        else
        {
            var before = steps.Before(task) ?? throw new BayRefusalException("There is no point to go back to: choose one in a job.");
            await AssignAsync(new BayWish(before.Job, before.Point, before.Gauge.ToString(), before.Wanted), cautionsRead: false, cancellationToken);
        }
    }

    /// <summary>Tells the bay what one of its points is now, where that is the one that was changed: the next capture is held against the new limit and setup.</summary>
    public async Task RenewAsync(string job, string point, CancellationToken cancellationToken)
    {
        if (bay.Tasks.FirstOrDefault(task => task.Job == job && task.Point == point) is { } task
            && await store.FindAsync(job, cancellationToken) is { } found && found.Points.Find(p => p.Code == point) is { } place)
        {
            bay.Renew(await TaskOfAsync(found, place, task.Gauge, task.Wanted, cancellationToken));
        }
    }

    /// <summary>Tells a gauge of the bay that it was checked, where it has a point: the next capture is held to that check.</summary>
    public async Task RenewAsync(GaugeName gauge, CancellationToken cancellationToken)
    {
        if (bay.View(gauge).Task is { } task)
        {
            await RenewAsync(task.Job, task.Point, cancellationToken);
        }
    }

    /// <summary>Goes on with what the bay did before the station was stopped.</summary>
    public async Task ResumeAsync(CancellationToken cancellationToken)
    {
        foreach (var kept in await KeptAsync(cancellationToken))
        {
            try
            {
                await AssignAsync(kept, cautionsRead: false, cancellationToken);
            }
            catch (Exception e) when (e is JobNotFoundException or BayRefusalException)
            {
                BayDeskLog.NotResumed(logger, e.Message);   // the gauge may be another one now; it has no point until somebody chooses
            }
        }
    }

    /// <summary>One gauge's point as a screen needs it; the point in front where no gauge is named.</summary>
    public async Task<BayMessage> DescribeAsync(GaugeName? gauge, CancellationToken cancellationToken)
    {
        var view = bay.View(gauge);
        var job = view.Task is { } task ? await store.FindAsync(task.Job, cancellationToken) : null;
        var newest = job?.Points.Find(p => p.Code == view.Task!.Point)?.NewestFirst.FirstOrDefault();
        var progress = view.Progress is { } known ? ProgressMessage.Of(known) : null;
        return new BayMessage
        {
            Phase = progress?.Phase is "running" or "waiting" ? progress.Phase : "idle",
            Unit = BayMessage.UnitCode(options.Unit),
            Job = view.Task?.Job,
            JobTitle = view.Task?.JobTitle,
            Bike = view.Task?.Bike,
            Point = view.Task?.Point,
            PointTitle = view.Task?.PointTitle,
            Gauge = view.Task?.Gauge.ToString(),
            Capture = progress?.Capture,
            Wanted = view.Task?.Wanted,
            Kind = view.Task is { } kind ? PointKindCodes.Of(kind.Kind) : null,
            Words = view.Task is { } measured ? WordsMessage.Of(measured.Method.Words) : null,
            TakesMarks = view.Task?.Method.TakesMarks ?? false,
            Setup = view.Task is { } told ? SetupSheets.Find(told.Kind)?.Tell(told.Setup, options.Unit) : null,
            Gate = job is not null ? BayGateMessage.Of(job, view.Task!.Point) : null,
            Heed = [.. job?.Plan?.Steps.FirstOrDefault(step => step.Point == view.Task!.Point)?.Cautions ?? [], .. PointCatalogue.Find(view.Task?.Point)?.Cautions ?? []],
            Place = view.Task is { } placed ? PlaceOf(placed) : [],
            Limit = LimitMessage.Of(view.Task?.Limit),
            Progress = progress,
            Trace = new([.. view.TraceSeconds.Select(t => Math.Round(t, 6))], [.. view.TraceMillimetres.Select(mm => Math.Round(mm, 7))]),
            Result = newest is null ? null : ResultMessage.Of(view.Task!.Job, view.Task.Point, newest, options.Unit),
            Next = view.Task is { } led && NextPoint.IsLedByHand(led, bay.Tasks) ? null : NextMessage.Of(steps.Coming(view.Task)),
            Before = steps.Before(view.Task)?.PointTitle,
            AtWork = [.. bay.Tasks.Select(PlaceMessage.Of)],
            Gauges = [.. gauges.All.Select(gauge => GaugeStateMessage.Of(gauge.State, clock, published.NotSent))],
            Cautions = RunoutCautions.Sentences,
            CautionsRead = job?.CautionsReadAt is not null,
        };
    }

    /// <summary>The gauge of that name; null where none is named.</summary>
    /// <exception cref="BayRefusalException">There is no such gauge.</exception>
    public GaugeName? Named(string? gauge) => gauge is null ? null : PickGauge(gauge);

    private IReadOnlyList<SetupFieldMessage> PlaceOf(BayTask task) =>
        [.. SetupSheets.Find(task.Kind)?.Fields(task.Setup, options.Unit).Where(field => field.AtTheBay).Select(SetupFieldMessage.Of) ?? []];

    private GaugeName PickGauge(string? asked)
    {
        var names = gauges.All.Select(gauge => gauge.Setup.Name).ToList();
        var list = string.Join(", ", names.Select(name => $"'{name}'"));
        return (asked, names.Count) switch
        {
            (null, 1) => names[0],
            (_, 0) => throw new BayRefusalException($"The station has no gauge: start it with --gauge NAME=PROFILE@PORT, or name one in {options.Data.Gauges}."),
            (null, _) => throw new BayRefusalException($"Say which gauge sits on the point: {list}."),
            _ => GaugeName.TryParse(asked, out var name) && names.Contains(name) ? name : throw new BayRefusalException($"There is no gauge '{asked}': give one of {list}."),
        };
    }

    private async Task<BayTask> TaskOfAsync(Job job, JobPoint point, GaugeName gauge, double wanted, CancellationToken cancellationToken) => new()
    {
        Job = job.Number,
        JobTitle = job.Title,
        Bike = job.Bike.Title,
        Point = point.Code,
        PointTitle = point.Title,
        Kind = point.Kind,
        Gauge = gauge,
        Limit = point.Limit,
        Setup = point.Setup,
        LastCheck = await book.LastCheckAsync(gauge.ToString(), cancellationToken),
        Wanted = wanted,
    };

    private async Task<IReadOnlyList<BayWish>> KeptAsync(CancellationToken cancellationToken)
    {
        try
        {
            return File.Exists(options.Data.Bay) ? JsonSerializer.Deserialize<List<BayWish>>(await File.ReadAllTextAsync(options.Data.Bay, cancellationToken)) ?? [] : [];
        }
        catch (JsonException e)
        {
            BayDeskLog.NotResumed(logger, e.Message);
            return [];
        }
    }

    private Task KeepAsync(CancellationToken cancellationToken) => File.WriteAllTextAsync(
        options.Data.Bay,
        JsonSerializer.Serialize(bay.Tasks.Select(task => new BayWish(task.Job, task.Point, task.Gauge.ToString(), task.Wanted))),
        cancellationToken);
}
