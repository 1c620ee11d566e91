namespace Handspun.Metrology.Runout;

/// <summary>Single readings far off both neighbours on either side.</summary>
internal static class Knocks
{
    /// <summary>Which readings stand alone; a reading at either end is held against the two beside it.</summary>
    /// <remarks>
    /// A turning shaft moves from reading to reading, so what counts as far grows with how much the neighbours themselves
    /// differ: a reading is alone when it leaves their span by more than the span and eight times the noise.
    /// </remarks>
    public static bool[] Find(ReadOnlySpan<double> millimetres, double noise)
    {
        var wild = new bool[millimetres.Length];
        if (millimetres.Length < 5)
        {
            return wild;
        }

        Span<double> near = stackalloc double[4];
        for (var i = 0; i < wild.Length; i++)
        {
            var from = Math.Clamp(i - 2, 0, wild.Length - 5);
            var count = 0;
            for (var j = from; j < from + 5; j++)
            {
                if (j != i)
                {
                    near[count++] = millimetres[j];
                }
            }

            near.Sort();
            var span = Math.Min(near[2] - near[0], near[3] - near[1]);   // one of the four may be wild itself
            var middle = (near[1] + near[2]) / 2;
            wild[i] = Math.Abs(millimetres[i] - middle) > 1.5 * span + 8 * noise;
        }

        return wild;
    }
}
