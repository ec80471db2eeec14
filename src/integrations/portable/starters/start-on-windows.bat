@echo off
rem Hands this folder out to devices near this one, with Python where there is one. Not tried by its makers.
rem Without Python the PowerShell that comes with Windows hands it out to this device alone: for others it would need an administrator.
cd /d "%~dp0"
if not exist index.html (
  echo index.html is not beside this file. Extract the whole zip, and start it in the folder that comes of it.
  pause
  exit /b 1
)
echo This folder is handed out until you close this window. On this device: http://localhost:8000/
where py >nul 2>nul
if not errorlevel 1 (
  echo On a device near this one, in the same network: http://ADDRESS:8000/ with one of these addresses:
  ipconfig | findstr /c:"IPv4"
  py -m http.server 8000
  if errorlevel 1 echo If another program has port 8000, close that one and start this again.
  pause
  exit /b
)
powershell -NoProfile -Command "$root=(Get-Location).Path; $types=@{'.html'='text/html; charset=utf-8';'.js'='text/javascript';'.css'='text/css';'.svg'='image/svg+xml';'.woff2'='font/woff2';'.json'='application/json'}; $listener=New-Object Net.HttpListener; $listener.Prefixes.Add('http://localhost:8000/'); $listener.Start(); while($listener.IsListening){ $asked=$listener.GetContext(); $path=[Uri]::UnescapeDataString($asked.Request.Url.AbsolutePath); if($path.EndsWith('/')){$path+='index.html'}; $file=[IO.Path]::GetFullPath((Join-Path $root $path.TrimStart('/'))); if($file.StartsWith($root+'\') -and (Test-Path -LiteralPath $file -PathType Leaf)){ $content=[IO.File]::ReadAllBytes($file); $type=$types[[IO.Path]::GetExtension($file)]; if($type){$asked.Response.ContentType=$type}; $asked.Response.OutputStream.Write($content,0,$content.Length) } else { $asked.Response.StatusCode=404 }; $asked.Response.Close() }"
if errorlevel 1 echo If another program has port 8000, close that one and start this again.
pause
