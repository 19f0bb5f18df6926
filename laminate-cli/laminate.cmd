@echo off
rem UNTESTED: written after the shell script "laminate" beside it, on a machine without Windows.
rem Runs laminate; builds it first where it is missing or older than its sources.
rem LAMINATE_NO_BUILD=1 runs what is built, whatever the age of the sources.
rem The exit code is the program's, or 127 where it cannot be started.
setlocal EnableExtensions DisableDelayedExpansion

set "here=%~dp0"
if "%here:~-1%"=="\" set "here=%here:~0,-1%"
for %%d in ("%here%\..") do set "root=%%~fd"
set "target=%here%\target"
set "jar=%target%\laminate.jar"
set "archive=%target%\classes.jsa"
set "classes=%target%\classes.lst"
set "main_class=laminate.cli.Main"
set "options=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData -Xshare:auto -Xlog:disable"

set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
"%java%" -version >nul 2>&1
if errorlevel 1 (
    echo laminate: Java is missing. Install a JDK, version 17 or later, or set JAVA_HOME.>&2
    exit /b 127
)

if defined LAMINATE_NO_BUILD goto run
if not exist "%jar%" goto build
powershell -NoProfile -Command "$jar = (Get-Item -LiteralPath $env:jar).LastWriteTime; $sources = @('pom.xml', 'laminate-core\pom.xml', 'laminate-core\src\main', 'material-library\pom.xml', 'material-library\src\main', 'laminate-cli\pom.xml', 'laminate-cli\src\main') | ForEach-Object { Join-Path $env:root $_ }; if (Get-Item -LiteralPath $sources -ErrorAction SilentlyContinue | ForEach-Object { $_; if ($_.PSIsContainer) { Get-ChildItem -LiteralPath $_.FullName -Recurse } } | Where-Object { $_.LastWriteTime -gt $jar } | Select-Object -First 1) { exit 1 }"
if errorlevel 1 goto build
goto run

:build
where mvn >nul 2>&1
if errorlevel 1 (
    echo laminate: Maven is missing, and the program is not built yet. Install Maven 3.8 or later.>&2
    exit /b 127
)
echo laminate: building the program. The first time this fetches what it needs, and can take some minutes.>&2
call mvn -q -B -ntp -f "%root%\pom.xml" -pl laminate-cli -am "-Dmaven.test.skip=true" package 1>&2 <nul
if errorlevel 1 (
    echo laminate: the build failed, see above.>&2
    exit /b 127
)
powershell -NoProfile -Command "(Get-Item -LiteralPath $env:jar).LastWriteTime = Get-Date"
if exist "%archive%" del /f /q "%archive%"
"%java%" %options% "-XX:DumpLoadedClassList=%classes%" -cp "%jar%" %main_class% estimate "%here%\src\main\training\part.yaml" >nul 2>&1 <nul
"%java%" -XX:+IgnoreUnrecognizedVMOptions -XX:+AOTClassLinking -Xlog:disable -Xshare:dump "-XX:SharedClassListFile=%classes%" "-XX:SharedArchiveFile=%archive%" -cp "%jar%" >nul 2>&1 <nul

:run
if not exist "%jar%" (
    echo laminate: the program is not built, and LAMINATE_NO_BUILD forbids to build it.>&2
    exit /b 127
)
"%java%" "-XX:SharedArchiveFile=%archive%" %options% -cp "%jar%" %main_class% %*
exit /b %ERRORLEVEL%
