using Hoopwright.Server.Commands;

return args switch
{
    ["backup", var file, .. var rest] => await BackupCommand.RunAsync(file, rest),
    ["restore", var file, .. var rest] => await RestoreCommand.RunAsync(file, rest),
    ["backup" or "restore" or "help" or "--help" or "-h", ..] => HelpCommand.Run(args[0]),
    _ => await ServeCommand.RunAsync(args),
};
