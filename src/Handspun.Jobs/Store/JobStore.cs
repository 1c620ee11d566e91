using Handspun.Jobs.Bikes;
using Handspun.Jobs.Book;
using Handspun.Jobs.Cranks;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Points;
using Handspun.Jobs.Points.Catalogue;
using Handspun.Jobs.Records;
using Handspun.Jobs.Store.Finding;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Jobs.Store;

/// <summary>The shop's jobs at rest: bikes, jobs, points, limits and records. Nothing is ever overwritten but what says who confirmed or picked.</summary>
public sealed class JobStore(IDbContextFactory<JobsContext> contexts, TimeProvider time)
{
    /// <summary>Opens a job on a bike. A bike with the same VIN is the same bike; where one of them has no VIN, one with the same plate, make and model.</summary>
    /// <param name="order">What was asked for; it must have no problems.</param>
    /// <param name="points">What is to be measured, in order.</param>
    /// <param name="cancellationToken">Stops waiting.</param>
    /// <exception cref="ArgumentException">The order has problems.</exception>
    public Task<Job> OpenAsync(NewJob order, IReadOnlyList<MeasuringPoint> points, CancellationToken cancellationToken) => OpenAsync(order, points, null, cancellationToken);

    /// <summary>Opens a job on a bike that takes a copy of a plan: its steps, its points, its parts.</summary>
    /// <param name="order">What was asked for; it must have no problems.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="cancellationToken">Stops waiting.</param>
    /// <exception cref="ArgumentException">The order has problems.</exception>
    public Task<Job> OpenAsync(NewJob order, Plan plan, CancellationToken cancellationToken) => OpenAsync(order, PlanPoints.Of(plan), plan, cancellationToken);

    private async Task<Job> OpenAsync(NewJob order, IReadOnlyList<MeasuringPoint> points, Plan? plan, CancellationToken cancellationToken)
    {
        var now = time.GetUtcNow();
        if (order.Problems(now.Year) is { Count: > 0 } problems)
        {
            throw new ArgumentException(string.Join(" ", problems.Values), nameof(order));
        }

        return await WriteAsync(
            async context =>
            {
                var job = new Job
                {
                    Number = await NextNumberAsync(context, time.GetLocalNow().Year, cancellationToken),
                    Title = order.Title!.Trim(),
                    Customer = Trimmed(order.Customer),
                    OpenedAt = now,
                    Bike = await BikeOfAsync(context, order, cancellationToken),
                    Points = [.. points.Select(PointOf)],
                    Plan = plan,
                };
                context.Jobs.Add(job);
                return job;
            },
            cancellationToken);
    }

    /// <summary>A job with its bike, points and records; null where there is none of that number.</summary>
    public async Task<Job?> FindAsync(string number, CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        return await Whole(context).FirstOrDefaultAsync(job => job.Number == number, cancellationToken);
    }

    /// <summary>The same where the job must be there.</summary>
    /// <exception cref="JobNotFoundException">There is none of that number.</exception>
    public async Task<Job> GetAsync(string number, CancellationToken cancellationToken) =>
        await FindAsync(number, cancellationToken) ?? throw JobNotFoundException.Job(number);

    /// <summary>A point of a job that must be there.</summary>
    /// <exception cref="JobNotFoundException">The job has no such point.</exception>
    public static JobPoint PointIn(Job job, string point) => job.Points.Find(p => p.Code == point) ?? throw JobNotFoundException.Point(job.Number, point);

    /// <summary>The newest jobs, newest first, with bikes, points and records.</summary>
    public async Task<IReadOnlyList<Job>> NewestAsync(int most, CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        return await NewestFirst(Whole(context)).Take(most).ToListAsync(cancellationToken);
    }

    /// <summary>One page of the jobs that a search finds, newest first, with all that belongs to them. Nothing is loaded of other jobs.</summary>
    /// <exception cref="ArgumentException">The search has a problem.</exception>
    public async Task<FoundJobs> SearchAsync(JobSearch search, CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        var (ids, count) = await FoundAsync(context, search, cancellationToken);
        return new(search, await NewestFirst(Whole(context).Where(job => ids.Contains(job.Id))).ToListAsync(cancellationToken), count);
    }

    /// <summary>The same with what a list shows: their bikes, how their plans stand, and of each point the record that counts.</summary>
    /// <exception cref="ArgumentException">The search has a problem.</exception>
    public async Task<FoundJobs> ListAsync(JobSearch search, CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        var (ids, count) = await FoundAsync(context, search, cancellationToken);
        var counting = await context.Points.Where(point => ids.Contains(point.JobId))
            .Select(point => point.PickedRecordId ?? context.Records.Where(record => record.JobPointId == point.Id && record.Status == RecordStatus.Complete)
                .OrderByDescending(record => record.At).ThenByDescending(record => record.Id).Select(record => record.Id).FirstOrDefault())
            .Where(record => record != null).ToListAsync(cancellationToken);
        var jobs = context.Jobs.AsNoTrackingWithIdentityResolution().AsSplitQuery().Where(job => ids.Contains(job.Id))
            .Include(job => job.Bike)
            .Include(job => job.Entries.Where(entry => entry.About.StartsWith(Subject.Steps) || entry.About.StartsWith(Subject.Findings)))
            .Include(job => job.Points).ThenInclude(point => point.Records.Where(record => counting.Contains(record.Id)));
        return new(search, await NewestFirst(jobs).ToListAsync(cancellationToken), count);
    }

    /// <summary>A record with the job and the point that it belongs to; null where there is none of that name.</summary>
    public async Task<(Job Job, JobPoint Point, CaptureRecord Record)?> FindRecordAsync(string id, CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        var job = await Whole(context).FirstOrDefaultAsync(j => j.Points.Any(p => p.Records.Any(r => r.Id == id)), cancellationToken);
        var point = job?.Points.Find(p => p.Records.Exists(r => r.Id == id));
        return point is null ? null : (job!, point, point.Records.First(r => r.Id == id));
    }

    /// <summary>Attaches a record to a point. The newest counts again, whatever was picked before.</summary>
    /// <exception cref="JobNotFoundException">There is no such job or point.</exception>
    /// <returns>The job as it is now.</returns>
    public Task<Job> AttachAsync(string job, string point, CaptureRecord record, CancellationToken cancellationToken) =>
        ChangePointAsync(job, point, found =>
        {
            found.Records.Add(record);
            if (record.Status == RecordStatus.Complete)
            {
                found.PickedRecordId = null;
            }
        }, cancellationToken);

    /// <summary>Lets a record of the point count.</summary>
    /// <exception cref="JobNotFoundException">There is no such job, point, or record with a result.</exception>
    /// <returns>The job as it is now.</returns>
    public Task<Job> PickAsync(string job, string point, string record, CancellationToken cancellationToken) =>
        ChangePointAsync(job, point, found =>
        {
            found.PickedRecordId = found.Records.Exists(r => r.Id == record && r.Status == RecordStatus.Complete)
                ? record
                : throw new JobNotFoundException($"Point '{point}' of job {job} has no record '{record}' with a result that could count.");
        }, cancellationToken);

    /// <summary>Says of a point what is to be known before it is measured.</summary>
    /// <exception cref="JobNotFoundException">There is no such job or point.</exception>
    /// <exception cref="ArgumentException">The setup is for another kind of point, or something in it cannot be.</exception>
    /// <returns>The job as it is now.</returns>
    public Task<Job> SetUpAsync(string job, string point, PointSetup setup, CancellationToken cancellationToken) => setup.Problems().FirstOrDefault() is { } problem
        ? throw new ArgumentException(problem, nameof(setup))
        : ChangePointAsync(
            job,
            point,
            found => found.Setup = setup.Kind == found.Kind
                ? setup
                : throw new ArgumentException($"Point '{point}' is measured as {PointKindCodes.Of(found.Kind)}: what was given is for {PointKindCodes.Of(setup.Kind)}.", nameof(setup)),
            cancellationToken);

    /// <summary>Notes a crank's measures: where the indicators stand at its ends, and the crank between them.</summary>
    /// <exception cref="JobNotFoundException">There is no such job, or it does not take both ends.</exception>
    /// <exception cref="ArgumentException">Something in it cannot be.</exception>
    /// <returns>The job as it is now.</returns>
    public Task<Job> SetCrankAsync(string job, CrankSheet crank, RunoutSetup driveSide, RunoutSetup pinionSide, CancellationToken cancellationToken) =>
        crank.Problems().Concat(driveSide.Problems()).Concat(pinionSide.Problems()).FirstOrDefault() is { } problem
            ? throw new ArgumentException(problem, nameof(crank))
            : ChangeAsync(
                job,
                found =>
                {
                    Place(PointIn(found, RunoutPoints.DriveSide.Code), driveSide);
                    Place(PointIn(found, RunoutPoints.Pinion.Code), pinionSide);
                    found.Crank = crank;
                },
                cancellationToken);

    // What else was said of the stand stays.
    private static void Place(JobPoint point, RunoutSetup stand) => point.Setup = point.Setup is RunoutSetup said
        ? said with { FromBearingMillimetres = stand.FromBearingMillimetres, DivisionMillimetres = stand.DivisionMillimetres }
        : stand;

    /// <summary>Adds a point of the catalogue to a job, after those that are there. One that is there already stays as it is.</summary>
    /// <exception cref="JobNotFoundException">There is no such job.</exception>
    /// <returns>The job as it is now.</returns>
    public Task<Job> AddPointAsync(string job, MeasuringPoint point, CancellationToken cancellationToken) => ChangeAsync(
        job,
        found =>
        {
            if (!found.Points.Exists(p => p.Code == point.Code))
            {
                found.Points.Add(PointOf(point, found.Points.Select(p => p.Place).DefaultIfEmpty(-1).Max() + 1));
            }
        },
        cancellationToken);

    /// <summary>Notes that the cautions were read and followed, the first time that somebody says so.</summary>
    /// <exception cref="JobNotFoundException">There is no such job.</exception>
    public async Task CautionsReadAsync(string job, CancellationToken cancellationToken)
    {
        await WriteAsync(
            async context =>
            {
                var found = await context.Jobs.Include(j => j.Bike).FirstOrDefaultAsync(j => j.Number == job, cancellationToken) ?? throw JobNotFoundException.Job(job);
                return found.CautionsReadAt ??= time.GetUtcNow();
            },
            cancellationToken);
    }

    /// <summary>Takes in a whole job that another store kept. The bike is known as when a job is opened.</summary>
    /// <exception cref="JobThereException">There is a job of that number, or one of its records.</exception>
    public Task<Job> TakeInAsync(Job job, CancellationToken cancellationToken) => WriteAsync(
        async context =>
        {
            if (await context.Jobs.AnyAsync(there => there.Number == job.Number, cancellationToken))
            {
                throw new JobThereException($"there is a job {job.Number} here already.");
            }

            var ids = job.Points.SelectMany(point => point.Records).Select(record => record.Id).ToList();
            if (await context.Records.Where(record => ids.Contains(record.Id)).Select(record => record.Id).FirstOrDefaultAsync(cancellationToken) is { } there)
            {
                throw new JobThereException($"its record {there} is here already, in another job.");
            }

            var brought = job.Bike;
            var known = await KnownAsync(context, brought, cancellationToken);
            context.Jobs.Add(job);
            if (known is not null)
            {
                context.Entry(job).Reference(added => added.Bike).CurrentValue = known;
                context.Entry(brought).State = EntityState.Detached;
            }

            return job;
        },
        cancellationToken);

    private Task<Job> ChangePointAsync(string job, string point, Action<JobPoint> change, CancellationToken cancellationToken) =>
        ChangeAsync(job, found => change(PointIn(found, point)), cancellationToken);

    internal Task<Job> ChangeAsync(string job, Action<Job> change, CancellationToken cancellationToken) => WriteAsync(
        async context =>
        {
            var found = await Whole(context).AsTracking().FirstOrDefaultAsync(j => j.Number == job, cancellationToken) ?? throw JobNotFoundException.Job(job);
            change(found);
            return found;
        },
        cancellationToken);

    // One at a time: on SQLite the transaction takes the write lock before anything is read, so that what was read still holds.
    private async Task<T> WriteAsync<T>(Func<JobsContext, Task<T>> change, CancellationToken cancellationToken)
    {
        await using var context = await contexts.CreateDbContextAsync(cancellationToken);
        await using var transaction = await context.Database.BeginTransactionAsync(cancellationToken);
        var result = await change(context);
        await context.SaveChangesAsync(cancellationToken);
        await transaction.CommitAsync(cancellationToken);
        return result;
    }

    private static async Task<(IReadOnlyList<int> Ids, int Count)> FoundAsync(JobsContext context, JobSearch search, CancellationToken cancellationToken)
    {
        if (search.Problem is { } problem)
        {
            throw new ArgumentException(problem, nameof(search));
        }

        var found = search.In(context.Jobs);
        var ids = await NewestFirst(found).Skip((search.Page - 1) * search.PerPage).Take(search.PerPage).Select(job => job.Id).ToListAsync(cancellationToken);
        return (ids, await found.CountAsync(cancellationToken));
    }

    private static IQueryable<Job> NewestFirst(IQueryable<Job> jobs) => jobs.OrderByDescending(job => job.OpenedAt).ThenByDescending(job => job.Id);

    private static IQueryable<Job> Whole(JobsContext context) =>
        context.Jobs.AsNoTrackingWithIdentityResolution().Include(job => job.Bike).Include(job => job.Entries).Include(job => job.Points).ThenInclude(point => point.Records).AsSplitQuery();

    private static async Task<string> NextNumberAsync(JobsContext context, int year, CancellationToken cancellationToken)
    {
        var prefix = $"{year:D4}-";
        var last = await context.Jobs.Select(job => job.Number).Where(number => number.StartsWith(prefix))
            .OrderByDescending(number => number.Length).ThenByDescending(number => number).FirstOrDefaultAsync(cancellationToken);
        var running = last is null ? 0 : int.Parse(last[prefix.Length..], System.Globalization.CultureInfo.InvariantCulture);
        return $"{prefix}{running + 1:D4}";
    }

    private static async Task<Bike> BikeOfAsync(JobsContext context, NewJob order, CancellationToken cancellationToken)
    {
        var brought = new Bike
        {
            Make = order.Make!.Trim(),
            Model = order.Model!.Trim(),
            Year = order.Year!.Value,
            Vin = Trimmed(order.Vin)?.ToUpperInvariant(),
            Plate = Trimmed(order.Plate),
            Odometer = order.Odometer,
        };
        if (await KnownAsync(context, brought, cancellationToken) is not { } known)
        {
            return brought;
        }

        known.Odometer = brought.Odometer ?? known.Odometer;
        known.Plate = brought.Plate ?? known.Plate;
        known.Vin ??= brought.Vin;
        return known;
    }

    // A plate can come to another bike; a VIN cannot.
    private static async Task<Bike?> KnownAsync(JobsContext context, Bike brought, CancellationToken cancellationToken)
    {
        if (brought.Vin is { } vin && await context.Bikes.FirstOrDefaultAsync(bike => bike.Vin == vin, cancellationToken) is { } same)
        {
            return same;
        }

        var (plate, kind) = (FoldedText.Plate(brought.Plate), FoldedText.Kind(brought));
        return plate is null ? null : await context.Bikes
            .Where(bike => EF.Property<string?>(bike, SearchColumns.PlateKey) == plate && EF.Property<string>(bike, SearchColumns.KindKey) == kind)
            .Where(bike => brought.Vin == null || bike.Vin == null)
            .OrderByDescending(bike => bike.Id).FirstOrDefaultAsync(cancellationToken);
    }

    private static JobPoint PointOf(MeasuringPoint point, int place) => new()
    {
        Place = place,
        Code = point.Code,
        Title = point.Title,
        Kind = point.Kind,
        Limit = point.ShippedLimit is { } limit ? limit with { } : null,
    };

    private static string? Trimmed(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
