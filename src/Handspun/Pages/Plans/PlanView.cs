namespace Handspun.Pages.Plans;

/// <summary>The plan of a job as its page shows it.</summary>
/// <param name="Title">The plan's name.</param>
/// <param name="Through">How many steps are through.</param>
/// <param name="Steps">The steps, in order.</param>
/// <param name="Next">The next step that can be done; null where there is none.</param>
/// <param name="Stop">The gate that stops the job; null where none does.</param>
public sealed record PlanView(string Title, int Through, IReadOnlyList<StepLine> Steps, StepLine? Next, GateView? Stop);

/// <summary>One step in the list.</summary>
/// <param name="Address">Its page.</param>
/// <param name="Title">Its name.</param>
/// <param name="State">How far it is, as a code: <c>open, done, held-back, skipped</c>, or for a shut gate <c>stop</c>.</param>
/// <param name="Note">Who did it and when, what it came to, or what it waits for; null where there is nothing to say.</param>
/// <param name="IsGate">Whether what comes after waits for it.</param>
public sealed record StepLine(string Address, string Title, string State, string? Note, bool IsGate)
{
    /// <summary>The state in a word.</summary>
    public string Word => State switch
    {
        "done" => "Done",
        "held-back" => "Held back",
        "skipped" => "Left out",
        "stop" => "Stop",
        _ => "Open",
    };
}

/// <summary>A gate that was measured and is not within its limit.</summary>
/// <param name="Address">The page of its step.</param>
/// <param name="Title">What was measured.</param>
/// <param name="Result">What the result says, with its limit.</param>
/// <param name="ToCustomer">What to tell the customer; null where there is nothing to tell.</param>
/// <param name="Decision">Who decided what and why; null where nobody has.</param>
/// <param name="IsOpen">Whether the job goes on.</param>
/// <param name="Record">The record that counts; empty for none.</param>
/// <param name="MayGoOn">Whether somebody can decide to go on.</param>
/// <param name="IsMeasured">Whether there is a record.</param>
public sealed record GateView(string Address, string Title, string Result, string? ToCustomer, string? Decision, bool IsOpen, string Record, bool MayGoOn, bool IsMeasured);
