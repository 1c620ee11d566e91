namespace Handspun.Station;

/// <summary>The station cannot start or go on, for a reason that the person at the keyboard can mend.</summary>
/// <param name="sentence">What is wrong and what to do.</param>
/// <param name="exitCode">1 for a trouble of the machine, 2 for wrong usage.</param>
internal sealed class StationTroubleException(string sentence, int exitCode = StationTroubleException.Machine) : Exception(sentence)
{
    /// <summary>The machine is not as it must be.</summary>
    public const int Machine = 1;

    /// <summary>The command line or a file of the shop's says something that cannot be.</summary>
    public const int Usage = 2;

    /// <summary>The program's exit code.</summary>
    public int ExitCode { get; } = exitCode;
}
