// Rows are mapped by what Dapper.AOT writes at build, wherever this assembly calls Dapper.
[module: Dapper.DapperAot]
