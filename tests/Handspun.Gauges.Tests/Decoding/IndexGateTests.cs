using CsCheck;
using Handspun.Gauges.Decoding;

namespace Handspun.Gauges.Tests.Decoding;

public class IndexGateTests
{
    [Fact]
    public void Pulses_ThatCount_AreNeverNearerThanTheDebounce_AndTheFirstCounts() =>
        Gen.Select(Gen.Int[0, 100], Gen.Int[0, 200].Array[1, 50]).Sample((debounce, gaps) =>
        {
            var gate = new IndexGate(TimeSpan.FromMilliseconds(debounce));
            var at = TimeSpan.Zero;
            var counted = new List<TimeSpan>();
            foreach (var gap in gaps)
            {
                at += TimeSpan.FromMilliseconds(gap);
                if (gate.Admits(at))
                {
                    counted.Add(at);
                }
            }

            Assert.Equal(TimeSpan.FromMilliseconds(gaps[0]), counted[0]);
            Assert.All(counted.Zip(counted.Skip(1)), pair => Assert.True(pair.Second - pair.First >= TimeSpan.FromMilliseconds(debounce)));
            if (debounce == 0)
            {
                Assert.Equal(gaps.Length, counted.Count);
            }
        });
}
