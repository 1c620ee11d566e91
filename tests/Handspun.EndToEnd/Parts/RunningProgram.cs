using System.Diagnostics;
using System.Text;

namespace Handspun.EndToEnd.Parts;

/// <summary>A program that a test started; it is ended by its own id when the test is over.</summary>
internal sealed class RunningProgram : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(45);

    private readonly Process _process;
    private readonly List<string> _output = [];
    private readonly StringBuilder _errors = new();

    private RunningProgram(Process process) => _process = process;

    public int Id => _process.Id;

    public IReadOnlyList<string> Output
    {
        get
        {
            lock (_output)
            {
                return [.. _output];
            }
        }
    }

    public string Errors
    {
        get
        {
            lock (_errors)
            {
                return _errors.ToString();
            }
        }
    }

    public static RunningProgram Start(string program, params IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo(program) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        var running = new RunningProgram(new Process { StartInfo = start });
        running._process.OutputDataReceived += (_, e) => running.Keep(e.Data);
        running._process.ErrorDataReceived += (_, e) => running.KeepError(e.Data);
        running._process.Start();
        running._process.BeginOutputReadLine();
        running._process.BeginErrorReadLine();
        return running;
    }

    /// <summary>Runs a program to its end.</summary>
    public static async Task<(int ExitCode, string Output, string Errors)> RunAsync(string program, params IEnumerable<string> arguments)
    {
        await using var running = Start(program, arguments);
        var code = await running.ExitAsync();
        return (code, string.Join('\n', running.Output), running.Errors);
    }

    public Task TellAsync(string line) => _process.StandardInput.WriteLineAsync(line);

    /// <summary>Waits for a line of output that begins like this, and returns what follows.</summary>
    public async Task<string> LineAsync(string beginning)
    {
        await Until.TrueAsync(
            () => Output.Any(line => line.StartsWith(beginning, StringComparison.Ordinal)) || _process.HasExited,
            () => $"no line '{beginning}…' from {_process.StartInfo.FileName}: {string.Join('\n', Output)}\n{Errors}");
        return Output.FirstOrDefault(line => line.StartsWith(beginning, StringComparison.Ordinal)) is { } found
            ? found[beginning.Length..].Trim()
            : throw new InvalidOperationException($"{_process.StartInfo.FileName} ended: {string.Join('\n', Output)}\n{Errors}");
    }

    public async Task<int> ExitAsync()
    {
        await _process.WaitForExitAsync().WaitAsync(Patience, TimeProvider.System);
        return _process.ExitCode;
    }

    /// <summary>Asks it to stop, as a service manager does, and waits for its end.</summary>
    public async Task<int> StopAsync()
    {
        await RunAsync("kill", "-TERM", Id.ToString(System.Globalization.CultureInfo.InvariantCulture));
        return await ExitAsync();
    }

    /// <summary>Ends it without any notice, as a power cut does.</summary>
    public async Task KillAsync()
    {
        _process.Kill();
        await ExitAsync();
    }

    public async ValueTask DisposeAsync()
    {
        if (!_process.HasExited)
        {
            await KillAsync();
        }

        _process.Dispose();
    }

    private void Keep(string? line)
    {
        if (line is not null)
        {
            lock (_output)
            {
                _output.Add(line);
            }
        }
    }

    private void KeepError(string? line)
    {
        if (line is not null)
        {
            lock (_errors)
            {
                _errors.AppendLine(line);
            }
        }
    }
}
