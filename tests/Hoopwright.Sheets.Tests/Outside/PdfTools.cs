using System.ComponentModel;
using System.Diagnostics;

namespace Hoopwright.Sheets.Tests.Outside;

/// <summary>
/// Programs of others that read our files: qpdf, and pdftotext, pdffonts, pdfinfo and pdftoppm of poppler. Skipped where they are not installed,
/// never where HOOPWRIGHT_NEEDS_PDF_TOOLS is set, as continuous integration does.
/// </summary>
internal static class PdfTools
{
    /// <summary>Runs one and gives what it said; fails where it ends with a fault.</summary>
    internal static string Run(string program, params string[] arguments)
    {
        (int exit, string said, string complained) = Start(program, arguments);
        Assert.True(exit == 0 && complained.Length == 0, $"{program} {string.Join(' ', arguments)} ended with {exit}: {complained}{said}");
        return said;
    }

    /// <summary>Puts a file where programs can read it, for as long as it takes.</summary>
    internal static T With<T>(ReadOnlySpan<byte> bytes, Func<string, T> use)
    {
        string folder = Directory.CreateTempSubdirectory("hoopwright-pdf-").FullName;
        try
        {
            string file = Path.Combine(folder, "file.pdf");
            File.WriteAllBytes(file, bytes);
            return use(file);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>Runs a program; skips the test where it is not installed.</summary>
    internal static (int Exit, string Said, string Complained) Start(string program, params string[] arguments)
    {
        ProcessStartInfo start = new(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true, StandardOutputEncoding = System.Text.Encoding.UTF8 };
        try
        {
            using Process process = Process.Start(start)!;
            Task<string> complained = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
            string said = process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return (process.ExitCode, said, complained.Result);
        }
        catch (Win32Exception) when (Environment.GetEnvironmentVariable("HOOPWRIGHT_NEEDS_PDF_TOOLS") is not { Length: > 0 })
        {
            Assert.Skip($"{program} is not installed here; the Debian packages are poppler-utils, qpdf and chromium.");
            throw;
        }
    }
}
