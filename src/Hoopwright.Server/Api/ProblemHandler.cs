using System.Text.Json;
using Hoopwright.Server.Storage;
using Hoopwright.Sharing;
using Microsoft.AspNetCore.Diagnostics;

namespace Hoopwright.Server.Api;

/// <summary>Turns what was thrown on the way into a problem that a person can read.</summary>
internal sealed partial class ProblemHandler(ILogger<ProblemHandler> log) : IExceptionHandler
{
    public async ValueTask<bool> TryHandleAsync(HttpContext context, Exception fault, CancellationToken stop)
    {
        // Whoever asked has gone: there is no one to tell.
        if (context.RequestAborted.IsCancellationRequested) return true;
        SharingProblem problem = fault switch
        {
            BadHttpRequestException { StatusCode: StatusCodes.Status413PayloadTooLarge } => Problems.BodyTooLarge,
            BadHttpRequestException { InnerException: JsonException json } => Problems.Malformed($"The request is not the JSON that is wanted here ({Place(json)}). Groups and lists may stand in each other {SharingLimits.Depth} deep."),
            BadHttpRequestException { StatusCode: StatusCodes.Status415UnsupportedMediaType } => Problems.NotJson,
            BadHttpRequestException => Problems.Malformed("The request cannot be read."),
            StorageException storage => Problems.Of(storage.Fault),
            _ => Problems.OurFault,
        };
        if (fault is StorageException) StorageFailed(log, fault.Message, fault.InnerException?.Message);
        if (problem == Problems.OurFault) Unexpected(log, fault);
        await problem.WriteAsync(context);
        return true;
    }

    private static string Place(JsonException json) => string.IsNullOrEmpty(json.Path) ? $"line {json.LineNumber + 1}, byte {json.BytePositionInLine + 1}" : $"at {json.Path}";

    [LoggerMessage(Level = LogLevel.Error, Message = "{What} ({Cause})")]
    private static partial void StorageFailed(ILogger log, string what, string? cause);

    [LoggerMessage(Level = LogLevel.Error, Message = "A request ended in a fault of the program.")]
    private static partial void Unexpected(ILogger log, Exception fault);
}
