using Handspun.Jobs.Bikes;
using Handspun.Jobs.Book;
using Handspun.Jobs.Limits;
using Handspun.Jobs.Orders;
using Handspun.Jobs.Plans;
using Handspun.Jobs.Points;
using Handspun.Jobs.Records;
using Handspun.Jobs.Store;
using Handspun.Metrology.Decision;
using Microsoft.EntityFrameworkCore;

namespace Handspun.Benchmarks;

/// <summary>A shop of many years: jobs with ten records each, on bikes that come again, of kinds that are not equally common.</summary>
internal sealed class InventedShop(int jobs, int seed)
{
    private const int Kinds = 40;
    private const int JobsAtOnce = 100;
    private const int RecordsPerJob = 10;
    private static readonly DateTimeOffset FirstDay = new(2016, 1, 4, 8, 0, 0, TimeSpan.Zero);
    private static readonly string[] Makes = ["Ardent", "Aldermoor", "Brümm", "Castor", "Dunlin"];
    private static readonly string[] Names = ["Åse", "Öre", "Wren", "Linnet", "Plover", "Dotterel", "Knot", "Ruff", "Smew", "Teal"];
    private readonly Random _random = new(seed);
    private readonly Plan _plan = new PlanShelf(PlanShelf.ShippedFolder).Find("cam-job");

    /// <summary>The numbers of the jobs, oldest first.</summary>
    public List<string> Numbers { get; } = [];

    /// <summary>Writes it all into a store, unless it is there.</summary>
    public async Task FillAsync(IDbContextFactory<JobsContext> contexts, CancellationToken cancellationToken)
    {
        await using (var before = await contexts.CreateDbContextAsync(cancellationToken))
        {
            Numbers.AddRange(await before.Jobs.OrderBy(job => job.Id).Select(job => job.Number).ToListAsync(cancellationToken));
        }

        if (Numbers.Count > 0)
        {
            return;
        }

        var bikes = Math.Max(1, jobs * 2 / 5);
        var keys = new int[bikes];
        for (var first = 0; first < jobs; first += JobsAtOnce)
        {
            await using var context = await contexts.CreateDbContextAsync(cancellationToken);
            var taken = new Dictionary<int, Bike>();
            for (var i = first; i < Math.Min(jobs, first + JobsAtOnce); i++)
            {
                var place = i < bikes ? i : _random.Next(bikes);
                var bike = taken.GetValueOrDefault(place) ?? (keys[place] == 0 ? NewBike(place) : await context.Bikes.SingleAsync(known => known.Id == keys[place], cancellationToken));
                taken[place] = bike;
                context.Jobs.Add(NewJob(i, bike));
            }

            await context.SaveChangesAsync(cancellationToken);
            foreach (var (place, bike) in taken)
            {
                keys[place] = bike.Id;
            }
        }
    }

    // Squared, so that the commonest of forty kinds is about a sixth of the shop.
    private Bike NewBike(int place)
    {
        var kind = (int)(Kinds * Math.Pow(_random.NextDouble(), 2));
        return new() { Make = Makes[kind % Makes.Length], Model = $"Twin {500 + 20 * kind}", Year = 1990 + _random.Next(30), Vin = $"ZZ9TEST{place:D8}", Plate = $"KX {place:D5}", Odometer = _random.Next(90_000) };
    }

    private Job NewJob(int i, Bike bike)
    {
        var at = FirstDay.AddHours(9 * i);
        var number = $"{at.Year}-{i + 1:D5}";
        Numbers.Add(number);
        var points = PlanPoints.Of(_plan).Select((point, place) => new JobPoint { Place = place, Code = point.Code, Title = point.Title, Kind = point.Kind, Limit = point.ShippedLimit is { } limit ? limit with { } : null }).ToList();
        for (var record = 0; record < RecordsPerJob; record++)
        {
            points[record % points.Count].Records.Add(NewRecord($"{number}-{record}", at.AddMinutes(record), points[record % points.Count].Limit));
        }

        var entries = _plan.Steps.Take(8).Select((step, line) => new BookEntry { Number = line + 1, At = at, By = Names[_random.Next(Names.Length)], About = Subject.Step(step.Code), Deed = new Ticked(null) }).ToList();
        return new() { Number = number, Title = i % 3 == 0 ? "Cam chest service" : "Bottom end inspection", Customer = $"{Names[_random.Next(Names.Length)]} {i % 977}", OpenedAt = at, Bike = bike, Plan = _plan, Points = points, Entries = entries, Version = entries.Count };
    }

    private CaptureRecord NewRecord(string id, DateTimeOffset at, Limit? limit)
    {
        var tir = 0.02 + 0.08 * _random.NextDouble();
        var figures = new RunoutFigures
        {
            Readings = 380,
            Rejected = 2,
            Turns = 3.25,
            TirMillimetres = tir,
            TirU95Millimetres = 0.005,
            EccentricityMillimetres = tir / 2,
            RoundnessMillimetres = 0.004,
            ZoneRoundnessMillimetres = 0.004,
            HighSpotDegrees = 360 * _random.NextDouble(),
            HighSpotU95Degrees = 3.2,
            LowSpotDegrees = 301.5,
            AngleReference = "mark",
            TirByTurnMillimetres = [tir, tir, tir],
        };
        return new()
        {
            Id = id,
            At = at,
            Seconds = 12,
            Ending = CaptureEnding.Enough,
            Status = RecordStatus.Complete,
            Figures = figures,
            Limit = limit is null ? null : limit with { },
            Gauge = new RecordGauge { Name = "pinion", Profile = "text-line", Port = "" },
            Verdict = limit is null ? null : ConformityRule.Decide(figures.Value!.Value, figures.ValueU95!.Value, limit.Tolerance).Verdict,
        };
    }
}
