namespace Handspun.Jobs.Store;

/// <summary>A job that was to be taken in is there already, or part of it is; nothing was changed.</summary>
/// <param name="sentence">What is there, to follow the name of what was read.</param>
public sealed class JobThereException(string sentence) : Exception(sentence);
