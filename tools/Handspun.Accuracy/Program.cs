using Handspun.Accuracy;

var count = args.Length > 0 ? int.Parse(args[0], System.Globalization.CultureInfo.InvariantCulture) : 60;
var seed = args.Length > 1 ? int.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 1;
var only = args.Length > 2 ? args[2] : "";

Console.WriteLine(ClassScore.Heading);
foreach (var kind in CaptureKinds.All.Where(kind => kind.Name.Contains(only, StringComparison.Ordinal)))
{
    Console.WriteLine(ClassScore.Of(kind, count, seed).Line);
}
