@echo off
rem Starts benchmetre.jar, which stands beside this file, with options of Java that suit the command.
rem
rem Java is that of JAVA_HOME, else the first on the PATH. Options in JAVA_OPTS and then BENCHMETRE_OPTS, parted by spaces,
rem come after those below and win over them. The exit code is that of the command; 127: no Java, or one older than 17.
setlocal

set "JAR=%~dp0benchmetre.jar"
if exist "%JAR%" goto java
echo benchmetre: there is no "%JAR%"; 'mvn package' makes it. 1>&2
exit /b 127

:java
if defined JAVA_HOME goto home
set "JAVA="
for %%J in (java.exe) do set "JAVA=%%~$PATH:J"
if defined JAVA goto version
echo benchmetre: there is no java on the PATH; install Java 17 or newer, or set JAVA_HOME to its folder. 1>&2
exit /b 127

:home
set "JAVA=%JAVA_HOME%\bin\java.exe"
if exist "%JAVA%" goto version
echo benchmetre: JAVA_HOME is "%JAVA_HOME%", but there is no bin\java.exe in it. 1>&2
exit /b 127

rem The installation tells its version in its file "release"; asking Java itself means to start it twice.
:version
set "VERSION="
set "MAJOR="
for %%J in ("%JAVA%") do set "RELEASE=%%~dpJ..\release"
if not exist "%RELEASE%" goto ask
for /f "usebackq tokens=1,2 delims==" %%K in ("%RELEASE%") do if "%%K"=="JAVA_VERSION" set "VERSION=%%~L"
:ask
if defined VERSION goto major
for /f "tokens=2,3" %%K in ('^""%JAVA%" -version 2^>^&1^"') do if "%%K"=="version" set "VERSION=%%~L"
:major
for /f "delims=.-+_" %%M in ("%VERSION%") do set "MAJOR=%%M"
if not defined MAJOR goto start
if %MAJOR% geq 17 goto start
echo benchmetre: Java 17 or newer is needed, but "%JAVA%" is version %VERSION%. 1>&2
exit /b 127

rem A short run ends before the thorough compiler has paid for itself, and needs no collector with threads of its own.
rem What is not named here may run long and has all that Java has.
:start
set "QUICK="
for %%C in (start price irrigation fund compare workbook lines explain check) do if "%~1"=="%%C" set "QUICK=-XX:TieredStopAtLevel=1"
set "OWN=%JAVA_OPTS% %BENCHMETRE_OPTS% %JDK_JAVA_OPTIONS% %JAVA_TOOL_OPTIONS%"
if defined QUICK if "%OWN:GC=%"=="%OWN%" set "QUICK=%QUICK% -XX:+UseSerialGC"

rem Classes as the build has laid them out. Another Java, or a jar that was moved, passes them over, and says nothing of it.
set "ARCHIVE=-Xshare:auto"
if exist "%~dp0benchmetre.jsa" set "ARCHIVE=-XX:SharedArchiveFile=%~dp0benchmetre.jsa"

"%JAVA%" %QUICK% "%ARCHIVE%" -Xlog:disable -Xlog:all=error:stderr %JAVA_OPTS% %BENCHMETRE_OPTS% -jar "%JAR%" %*
exit /b %ERRORLEVEL%
