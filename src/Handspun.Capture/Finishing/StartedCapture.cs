using Handspun.Capture.Bays;

namespace Handspun.Capture.Finishing;

/// <summary>A capture that has started: enough to find it again after the station was stopped in the middle of it.</summary>
/// <param name="Id">The capture's name.</param>
/// <param name="Task">What is measured.</param>
/// <param name="From">Its first moment on the gauge clock.</param>
public sealed record StartedCapture(string Id, BayTask Task, TimeSpan From);
