namespace Handspun.Pages;

/// <summary>The form for a new job, empty or as it was typed together with what was wrong.</summary>
/// <param name="Values">What was typed.</param>
/// <param name="Errors">One sentence a field, by the field's name (<c>make, model, year, odometer, vin, customer, title</c>).</param>
public sealed record JobFormView(JobFormValues Values, IReadOnlyDictionary<string, string> Errors)
{
    /// <summary>A form nobody has typed in.</summary>
    public static JobFormView Empty { get; } = new(new JobFormValues(), new Dictionary<string, string>());
}

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

    /// <summary>Whose bike it is, or nothing.</summary>
    public string Customer { get; init; } = "";

    /// <summary>What the job is about.</summary>
    public string Title { get; init; } = "";
}
