using Hoopwright.Server.Commands;

return args switch
{
    ["backup", var file, .. var rest] => await BackupCommand.RunAsync(file, rest),
    ["restore", var file, .. var rest] => await RestoreCommand.RunAsync(file, rest),
    _ => await ServeCommand.RunAsync(args),
};
