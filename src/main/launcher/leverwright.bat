@echo off
rem Runs Leverwright from any folder, with the JDK in JAVA_HOME, else with the one on the path.
rem Untried: written for Windows, but nobody has run it there yet.
setlocal EnableExtensions
set "LIB=%~dp0..\lib"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java.exe"
if defined JAVA_HOME if not exist "%JAVA%" (
  echo leverwright: JAVA_HOME is %JAVA_HOME%, which holds no bin\java.exe; set it to a JDK 17 or newer 1>&2
  exit /b 2
)
if not defined JAVA_HOME where java >nul 2>nul || (
  echo leverwright: no Java found; install a JDK 17 or newer or set JAVA_HOME to one 1>&2
  exit /b 2
)
set "VERSION="
for /f "tokens=2 delims==" %%v in ('""%JAVA%" -XshowSettings:properties -version 2>&1 ^| findstr /c:"java.runtime.version ="') do set "VERSION=%%v"
set "VERSION=%VERSION: =%"
set "FEATURE=0"
for /f "delims=.+-" %%f in ("%VERSION%") do set "FEATURE=%%f"
if %FEATURE% LSS 17 (
  echo leverwright: Java %VERSION% is too old; install a JDK 17 or newer and set JAVA_HOME to it 1>&2
  exit /b 2
)
set "ARCHIVE="
if exist "%LIB%\leverwright-%VERSION%.aot" set ARCHIVE="-XX:AOTCache=%LIB%\leverwright-%VERSION%.aot" -Xlog:aot*=off:stderr
if exist "%LIB%\leverwright-%VERSION%.jsa" set ARCHIVE="-XX:SharedArchiveFile=%LIB%\leverwright-%VERSION%.jsa" -Xlog:cds*=off:stderr
set "WINDOW="
if "%~1"=="desk" if exist "%LIB%\fx" (
  set "ARCHIVE="
  if exist "%LIB%\leverwright-desk-%VERSION%.aot" set ARCHIVE="-XX:AOTCache=%LIB%\leverwright-desk-%VERSION%.aot" -Xlog:aot*=off:stderr
  if exist "%LIB%\leverwright-desk-%VERSION%.jsa" set ARCHIVE="-XX:SharedArchiveFile=%LIB%\leverwright-desk-%VERSION%.jsa" -Xlog:cds*=off:stderr
  set WINDOW=-Xms88m -Xmn52m -XX:MinHeapFreeRatio=15 -XX:MaxHeapFreeRatio=30 -XX:-UsePerfData --module-path "%LIB%\fx" --add-modules javafx.controls --enable-native-access=javafx.graphics
  if %FEATURE% GEQ 23 set WINDOW=-Xms88m -Xmn52m -XX:MinHeapFreeRatio=15 -XX:MaxHeapFreeRatio=30 -XX:-UsePerfData --module-path "%LIB%\fx" --add-modules javafx.controls --enable-native-access=javafx.graphics --sun-misc-unsafe-memory-access=allow
)
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Djdk.reflect.useNativeAccessorOnly=true -Xlog:disable -Xlog:all=error:stderr %ARCHIVE% ^
  -Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Dsun.stdout.encoding=UTF-8 ^
  -Dstderr.encoding=UTF-8 -Dsun.stderr.encoding=UTF-8 ^
  -Duser.language=en -Duser.country=US -Djava.awt.headless=true ^
  %WINDOW% -jar "%LIB%\leverwright.jar" %*
exit /b %ERRORLEVEL%
