using Handspun.Jobs.Entries;
using Handspun.Jobs.Limits;
using Handspun.Metrology.Quantities;

namespace Handspun.Jobs.Points.Catalogue;

/// <summary>What is read off a tool by eye.</summary>
internal static class HandPoints
{
    public static IReadOnlyList<MeasuringPoint> All { get; } =
    [
        new()
        {
            Code = "tensioner-shoe-thickness",
            Title = "Tensioner shoe thickness",
            Kind = PointKind.ByHand,
            How = "Measure the shoe at its thinnest place with a depth gauge or a caliper, and type what the tool shows. The service manual has the smallest thickness.",
            ReadBy = [EntryWay.Once],
            Plausible = PlausibleAt.Between("a tensioner shoe", 1, 30),
            Cautions = ["A spring-loaded tensioner is held back with its own pin or tool before anything is taken off."],
        },
        new()
        {
            Code = "pump-rotor-tip",
            Title = "Pump rotor tip clearance",
            Kind = PointKind.ByHand,
            How = "Stand the tip of the inner rotor across from a tip of the outer one. Type the thickest feeler blade that goes between them without force, and the next one up, which does not.",
            ReadBy = [EntryWay.Leaves],
            Plausible = PlausibleAt.Between("a gap at the rotor's tip", 0.01, 1),
            // From memory, not confirmed: the usual limit for the tips of a rotor pump.
            ShippedLimit = new Limit
            {
                UpperMillimetres = Length.FromInches(0.004).Millimetres,
                Source = "from memory, no source: look it up in the machine's service manual",
            },
        },
    ];
}
