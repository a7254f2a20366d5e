@echo off
rem Builds what is missing or stale, then runs the tool: storyrod build projects\window-bench
setlocal enabledelayedexpansion
set "HERE=%~dp0"
set "JDK="
for %%H in ("%JAVA_HOME%") do call :try "%%~H"
for /f "delims=" %%J in ('where java 2^>nul') do call :try "%%~dpJ.."
for /d %%H in ("%ProgramFiles%\Java\*" "%ProgramFiles%\Eclipse Adoptium\*" "%ProgramFiles%\Microsoft\jdk*" "%USERPROFILE%\.jdks\*") do call :try "%%~H"
if not defined JDK (
  echo storyrod: install a JDK of version 21 or newer, then run this again 1>&2
  exit /b 1
)

set "STALE=1"
if exist "%HERE%target\built" if exist "%HERE%target\storyrod-0.1.jar" (
  for /f %%S in ('powershell -NoProfile -Command "$b=(Get-Item '%HERE%target\built').LastWriteTime; @(Get-ChildItem -Recurse '%HERE%src\main','%HERE%templates','%HERE%pom.xml' | Where-Object LastWriteTime -gt $b).Count"') do if "%%S"=="0" set "STALE="
)
if defined STALE (
  where mvn >nul 2>nul || (
    echo storyrod: install Apache Maven 3.8 or newer, then run this again 1>&2
    exit /b 1
  )
  echo storyrod: building the tool 1>&2
  call mvn -q -f "%HERE%pom.xml" -Dmaven.test.skip=true package 1>&2 || exit /b 1
  type nul > "%HERE%target\built"
)

set "QUICK=-XX:TieredStopAtLevel=1"
if "%~1"=="layout" set "QUICK="
"%JDK%\bin\java" %QUICK% -XX:+UseSerialGC -Djava.awt.headless=true -jar "%HERE%target\storyrod-0.1.jar" %*
exit /b %ERRORLEVEL%

:try
if defined JDK exit /b 0
if not exist "%~1\release" exit /b 0
if not exist "%~1\bin\javac.exe" exit /b 0
for /f "tokens=2 delims==" %%V in ('findstr /b JAVA_VERSION "%~1\release"') do (
  set "VERSION=%%~V"
  for /f "delims=." %%M in ("!VERSION!") do if %%M geq 21 set "JDK=%~1"
)
exit /b 0
