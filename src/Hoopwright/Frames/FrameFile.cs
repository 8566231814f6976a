using Hoopwright.ModelFiles;

namespace Hoopwright.Frames;

/// <summary>
/// Reads frame models: JSON with comments and trailing commas, UTF-8 with or without a mark, as docs/frame-file.md says.
/// Whatever the bytes are, the answer is a model or a list of diagnostics, never an exception.
/// </summary>
public static class FrameFile
{
    /// <summary>Reads a model.</summary>
    /// <param name="utf8">The bytes of the file.</param>
    /// <returns>The model, or all that is wrong with it in one pass.</returns>
    public static FrameReading Read(ReadOnlyMemory<byte> utf8)
    {
        var problems = new ModelProblems();
        return ModelFile.Read(utf8, problems, file => Read(file, problems)) ?? new(null, problems.All());
    }

    /// <summary>Reads a model and solves it.</summary>
    /// <param name="utf8">The bytes of the file.</param>
    /// <returns>The answer, with what was told on reading before what was told on solving.</returns>
    public static FrameAnswer Solve(ReadOnlyMemory<byte> utf8)
    {
        var reading = Read(utf8);
        if (reading.Model is not { } model)
            return new() { Diagnostics = reading.Diagnostics };
        var answer = FrameSolver.Solve(model);
        return answer with { Diagnostics = [.. reading.Diagnostics, .. answer.Diagnostics] };
    }

    private static FrameReading Read(ModelGroup file, ModelProblems problems)
    {
        var model = new FrameFileReader(problems).Read(file);
        if (!problems.HasErrors)
            return new(model, problems.All());
        // What was read is checked as well, so that all is told in one pass; what is left out of it cannot be judged.
        foreach (var found in FrameCheck.Problems(model))
        {
            if (found.Code is not ("model.part.not-held" or "model.empty" or "model.no-combination" or "model.too-large"))
                problems.Say(found);
        }
        return new(null, problems.All());
    }
}
