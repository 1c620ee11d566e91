namespace Handspun.Pages;

/// <summary>The form for a new job, empty or as it was typed together with what was wrong.</summary>
/// <param name="Values">What was typed.</param>
/// <param name="Plans">The plans to choose from.</param>
/// <param name="Errors">One sentence a field, by the field's name (<c>make, model, year, odometer, vin, plate, customer, title, plan</c>).</param>
public sealed record JobFormView(JobFormValues Values, PlanChoiceView Plans, IReadOnlyDictionary<string, string> Errors);

/// <summary>The plans that a job can take.</summary>
/// <param name="Plans">Code, title, and what it is for.</param>
/// <param name="Problems">What is wrong with plans that cannot be used, one sentence each.</param>
public sealed record PlanChoiceView(IReadOnlyList<PlanChoice> Plans, IReadOnlyList<string> Problems);

/// <summary>A plan that a job can take.</summary>
/// <param name="Code">Its code; empty for none.</param>
/// <param name="Title">Its name.</param>
/// <param name="About">What it is for and how many steps it has.</param>
public sealed record PlanChoice(string Code, string Title, string About);

/// <summary>What was typed, exactly as typed.</summary>
public sealed record JobFormValues
{
    /// <summary>Who made the bike.</summary>
    public string Make { get; init; } = "";

    /// <summary>The bike's model.</summary>
    public string Model { get; init; } = "";

    /// <summary>The model year, four digits.</summary>
    public string Year { get; init; } = "";

    /// <summary>What the odometer shows, with or without a unit.</summary>
    public string Odometer { get; init; } = "";

    /// <summary>The vehicle identification number, or nothing.</summary>
    public string Vin { get; init; } = "";

    /// <summary>The number plate, or nothing.</summary>
    public string Plate { get; init; } = "";

    /// <summary>Whose bike it is, or nothing.</summary>
    public string Customer { get; init; } = "";

    /// <summary>What the job is about.</summary>
    public string Title { get; init; } = "";

    /// <summary>The plan's code, or nothing.</summary>
    public string Plan { get; init; } = "";
}
