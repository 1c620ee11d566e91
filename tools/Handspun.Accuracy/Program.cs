using System.Globalization;
using Handspun.Accuracy;
using Handspun.Accuracy.ByHand;
using Handspun.Accuracy.Lift;

// accuracy [captures a class] [seed] [part of a class's name]
var captures = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 60;
var seed = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 1;
var only = args.Length > 2 ? args[2] : "";

Console.WriteLine("Errors and uncertainties in micrometres; medians unless 90 (percentile) is said.");
Console.WriteLine(ClassScore.Heading);
foreach (var kind in CaptureKinds.All.Where(kind => kind.Name.Contains(only, StringComparison.Ordinal)))
{
    Console.WriteLine(ClassScore.Of(kind, captures, seed).Line);
}

Console.WriteLine();
Console.WriteLine(PlainScore.Heading);
foreach (var kind in EndPlayKinds.All.Concat(BoreKinds.All).Where(kind => kind.Name.Contains(only, StringComparison.Ordinal)))
{
    Console.WriteLine(PlainScore.Of(kind, captures, seed).Line);
}

Console.WriteLine();
Console.WriteLine("Lift: lengths in micrometres, angles in degrees of the crank, pulses a turn of the crank.");
Console.WriteLine(LiftScore.Heading);
foreach (var kind in LiftKinds.All.Where(kind => kind.Name.Contains(only, StringComparison.Ordinal)))
{
    Console.WriteLine(LiftScore.Of(kind, captures, seed).Line);
}
