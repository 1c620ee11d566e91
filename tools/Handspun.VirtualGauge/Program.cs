using System.CommandLine;
using Handspun.Simulation;
using Handspun.Simulation.Speech;
using Handspun.VirtualGauge;
using Handspun.VirtualGauge.Samples;
using Handspun.VirtualGauge.Shaft;
using Handspun.VirtualGauge.Wires;

var link = new Option<string?>("--link") { Description = "Keep a symbolic link of this name to the serial device, so that its name stays when it is unplugged and plugged again." };
var tcp = new Option<int?>("--tcp") { Description = "Send on this loopback TCP port instead of a pseudo-terminal; 0 lets the system choose." };
var tir = new Option<double>("--tir-mm") { Description = "Total indicated runout of the shaft, in millimetres.", DefaultValueFactory = _ => 0.08 };
var harmonics = new Option<int>("--harmonics") { Description = "Waves that the shape of the shaft is made of.", DefaultValueFactory = _ => 3 };
var seed = new Option<int>("--seed") { Description = "The same seed gives the same shaft, noise and hand.", DefaultValueFactory = _ => 1 };
var rate = new Option<double>("--rate") { Description = "Readings a second.", DefaultValueFactory = _ => 50 };
var turns = new Option<double>("--turns") { Description = "Turns that the hand makes each time.", DefaultValueFactory = _ => 3.6 };
var speed = new Option<double>("--turns-per-second") { Description = "How fast the hand turns.", DefaultValueFactory = _ => 0.6 };
var every = new Option<double?>("--turn-every") { Description = "Turn by itself every so many seconds; without it the hand waits for the word 'turn' on the standard input." };
var inch = new Option<bool>("--inch") { Description = "Set the gauge to inches." };
var noise = new Option<double>("--noise-um") { Description = "Standard deviation of the indicator's noise, in micrometres.", DefaultValueFactory = _ => 0.5 };
var endPlay = new Option<double>("--end-play-mm") { Description = "End play of the shaft for the word 'push-pull', in millimetres.", DefaultValueFactory = _ => 0.12 };
var bore = new Option<double>("--bore-mm") { Description = "Diameter of the bore for the word 'rock', in millimetres.", DefaultValueFactory = _ => 21.4 };
var boreOff = new Option<double>("--bore-off-mm") { Description = "How much larger that bore is than what the gauge was zeroed at, in millimetres.", DefaultValueFactory = _ => 0.012 };
var body = new Option<double>("--body-mm") { Description = "Diameter of the body for the word 'roll', in millimetres.", DefaultValueFactory = _ => 21.39 };
var bodyOff = new Option<double>("--body-off-mm") { Description = "How much larger that body is than what the gauge was set on, in millimetres.", DefaultValueFactory = _ => 0.008 };
var camLift = new Option<double>("--cam-lift-mm") { Description = "How high the cam lifts the tappet for the word 'cam', in millimetres.", DefaultValueFactory = _ => 9 };

var speak = new Option<string>("--speak") { Description = "Send what a profile of this name reads.", DefaultValueFactory = _ => "text-line" };
speak.AcceptOnlyFromAmong([.. GaugeSpeeches.ByProfile.Keys.Concat(HidSpeech.ByProfile.Keys).Order(StringComparer.Ordinal)]);
var off = new Option<double?>("--off-centre-mm") { Description = "Make the shaft round and off centre by so much, in millimetres, instead of --tir-mm and --harmonics." };
var toward = new Option<double>("--toward-deg") { Description = "With --off-centre-mm: toward which angle from the index, in degrees." };
var fault = new Option<double?>("--fault-mm") { Description = "Put a narrow place 8 degrees wide on the shaft that stands out by so much, in millimetres; below zero it is sunk." };
var faultAt = new Option<double>("--fault-at-deg") { Description = "With --fault-mm: where it is, in degrees.", DefaultValueFactory = _ => 200 };
var index = new Option<bool>("--index") { Description = "A sensor beside it sees the shaft's zero pass once a turn; the gauge says so where its frames have room for it (text-labelled: s=I)." };
var teeth = new Option<int>("--teeth") { Description = "With --index: the sensor sees a disc with so many teeth, the last of them missing, so that zero is after the gap." };
var camCentre = new Option<double>("--cam-centre-deg") { Description = "Where the middle of the lobe is for the word 'cam', in degrees of the cam from the crank's zero.", DefaultValueFactory = _ => 140 };
var sample = new Option<string?>("--sample") { Description = "Write a journal of one capture into this file instead of sending; the same seed gives the same file." };

var switches = new Option<bool>("--switch-unit") { Description = "With --sample: somebody presses the unit button half way." };

var root = new RootCommand("A gauge that is not there: sends the frames of an indicator on a shaft that a hand turns or pushes and pulls, on a tappet of a cam, in a bore gauge that it rocks, or over a body that it rolls, over a real serial device.")
{
    link, tcp, tir, harmonics, seed, rate, turns, speed, every, inch, noise, endPlay, bore, boreOff, body, bodyOff, camLift, off, toward, fault, faultAt, index, teeth, camCentre, speak, sample, switches,
};
root.SetAction(async (parsed, stopping) =>
{
    var shape = parsed.GetValue(off) is { } offCentre
        ? new ShaftShape([new ShaftWave(1, offCentre, parsed.GetValue(toward))])
        : ShaftShape.WithTir(parsed.GetValue(tir), parsed.GetValue(seed), parsed.GetValue(harmonics));
    shape = parsed.GetValue(fault) is { } height ? shape.With(new ShaftFault(parsed.GetValue(faultAt), WidthDegrees: 8, height)) : shape;
    var indicator = new Indicator
    {
        NoiseMicrometres = parsed.GetValue(noise),
        ResolutionMillimetres = parsed.GetValue(inch) ? 0.00127 : 0.001,   // 0.00005 in
    };
    if (HidSpeech.ByProfile.ContainsKey(parsed.GetValue(speak)!))
    {
        if (parsed.GetValue(sample) is not { } reports)
        {
            Console.Error.WriteLine($"A program cannot be a HID device: give --sample FILE with --speak {parsed.GetValue(speak)}.");
            return 2;
        }

        var hid = new HidSampleRecording(shape, indicator, parsed.GetValue(speak)!, parsed.GetValue(seed));
        Console.WriteLine($"tir_mm {hid.WriteTo(reports, parsed.GetValue(rate), parsed.GetValue(turns), parsed.GetValue(speed)):0.00000}");
        return 0;
    }

    var speech = GaugeSpeeches.ByProfile[parsed.GetValue(speak)!];
    if (parsed.GetValue(sample) is { } file)
    {
        var recording = new SampleRecording(shape, indicator, parsed.GetValue(speak)!, speech, parsed.GetValue(seed)) { SwitchesUnit = parsed.GetValue(switches) };
        Console.WriteLine($"tir_mm {recording.WriteTo(file, parsed.GetValue(rate), parsed.GetValue(turns), parsed.GetValue(speed)):0.00000}");
        return 0;
    }

    var pace = new GaugePace
    {
        Hertz = parsed.GetValue(rate),
        Turns = parsed.GetValue(turns),
        TurnsPerSecond = parsed.GetValue(speed),
        TurnEvery = parsed.GetValue(every) is { } seconds ? TimeSpan.FromSeconds(seconds) : null,
    };
    var tcpPort = parsed.GetValue(tcp) ?? (OperatingSystem.IsWindows() ? 0 : null);
    var work = new HandWork { EndPlayMillimetres = parsed.GetValue(endPlay), BoreMillimetres = parsed.GetValue(bore), BoreOffMillimetres = parsed.GetValue(boreOff), BodyMillimetres = parsed.GetValue(body), BodyOffMillimetres = parsed.GetValue(bodyOff), CamLiftMillimetres = parsed.GetValue(camLift), CamCentreDegrees = parsed.GetValue(camCentre) };
    IWire Plug() => tcpPort is { } port ? new TcpOutlet(port) : new PseudoTerminal(parsed.GetValue(link));
    var shaft = new ShaftUnderIndicator(shape, indicator, speech, parsed.GetValue(seed)) { Inch = parsed.GetValue(inch), HasIndex = parsed.GetValue(index) || parsed.GetValue(teeth) > 0, TeethPerTurn = Math.Max(1, parsed.GetValue(teeth)), MissesTooth = parsed.GetValue(teeth) > 1 };
    await new VirtualGauge(shaft, work, Plug, pace, TimeProvider.System)
        .RunAsync(Console.In, Console.Out, stopping);
    return 0;
});
return await root.Parse(args).InvokeAsync();
