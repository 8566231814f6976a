using System.Numerics;
using Hoopwright.ModelFiles;

namespace Hoopwright.Cutting;

/// <summary>
/// Reads and solves cutting jobs given as files, as docs/cut-job.md says. Whatever the bytes are, the answer is a plan or a list
/// of diagnostics, never an exception.
/// </summary>
public static class CutFile
{
    /// <summary>Reads a job and cuts it at the least cost.</summary>
    /// <param name="utf8">The bytes of the file.</param>
    /// <param name="effort">How much work may be spent; <see cref="CutEffort.Usual"/> when null.</param>
    /// <param name="stopAsked">Asked now and then; true ends the work with the best plan so far. Null never stops.</param>
    /// <param name="earlier">
    /// The bytes of an earlier answer as JSON, to which is added what became of its bars: then the rest is planned. Null when
    /// nothing has been cut yet.
    /// </param>
    public static CutFileAnswer Solve(ReadOnlyMemory<byte> utf8, CutEffort? effort = null, Func<bool>? stopAsked = null, ReadOnlyMemory<byte>? earlier = null)
    {
        var problems = new ModelProblems();
        var job = ModelFile.Read(utf8, problems, file => new CutFileReader(problems).Read(file));
        if (job is null || problems.HasErrors)
        {
            // What was read is checked as well, so that all is told in one pass; what hangs on a line left out cannot be judged.
            if (job is not null)
            {
                foreach (var found in JobReader.Read(job.Job, job.Words, job.Worth).Diagnostics)
                {
                    if (found.Code is not ("cut.stock.none" or "cut.piece.too-long"))
                        problems.Say(found);
                }
            }

            return CutFileAnswer.Without(problems.All());
        }

        if (earlier is { } before)
        {
            var done = new ModelProblems();
            var read = ModelFile.Read(before, done, file => new EarlierReader(done).Read(file));
            if (read is null || done.HasErrors)
                return CutFileAnswer.Without([.. done.All().Select(each => each with { Path = "earlier file: " + each.Path })]);
            var whole = job.Job with { Pieces = [.. job.Job.Pieces.Select(piece => piece with { Count = piece.Count + read.Again.GetValueOrDefault(piece.Id) })] };
            var again = Recutter.Solve(whole, job.Words, job.Worth, read.Bars, effort, stopAsked);
            return new CutFileAnswer { Job = job with { Job = whole }, Plan = again.Plan.Found ? again.Plan : null, Again = again, Diagnostics = [.. problems.All(), .. again.Diagnostics] };
        }

        var plan = Cutter.Solve(job.Job, job.Words, job.Worth, effort, stopAsked);
        return new CutFileAnswer { Job = job, Plan = plan.Found ? plan : null, Diagnostics = [.. problems.All(), .. plan.Diagnostics] };
    }
}

/// <summary>A job as a file gives it, in plain numbers: lengths in the file's own unit, or metres where it names units.</summary>
/// <param name="Job">The job; prices in the file's own unit, or in cents where it names units of length.</param>
/// <param name="Words">How its numbers are said.</param>
/// <param name="Worth">Worth of a rest per length as a fraction; null to take the job's own rule.</param>
/// <param name="NamesUnits">True when its lengths are texts with units.</param>
internal sealed record CutFileJob(UnitlessCutJob Job, CutWords Words, (BigInteger Over, BigInteger Under)? Worth, bool NamesUnits)
{
    /// <summary>Units of the plan's money to one of the file's.</summary>
    internal decimal MoneyScale => NamesUnits ? 100 : 1;
}
