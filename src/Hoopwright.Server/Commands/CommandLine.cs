namespace Hoopwright.Server.Commands;

/// <summary>Options of all commands: `--name value`, or the environment.</summary>
internal static class CommandLine
{
    public static IConfiguration Read(string[] args) => new ConfigurationBuilder().AddEnvironmentVariables("ASPNETCORE_").AddEnvironmentVariables().AddCommandLine(args).Build();
}
