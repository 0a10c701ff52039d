# Shared by releng/turnheel and releng/verify; sourced, not run. Finds what a build needs and fetches what it may.
# Needs from the caller: root, the repository's top folder. Gives: JAVA_HOME, and the functions below.

minimum_jdk=21
maven_version=3.9.11
tools="$root/.tools" # git-ignored

die() {
    printf 'turnheel: %s\n' "$*" >&2
    exit 2
}

# Prints the feature version of the JDK in $1, or nothing. Reads its release file: a JVM would take longer to start.
jdk_version() {
    [ -x "$1/bin/javac" ] && [ -r "$1/release" ] || return 0
    sed -n 's/^JAVA_VERSION="\([0-9][0-9]*\).*/\1/p' "$1/release"
}

# JAVA_HOME when it is new enough, else the oldest JDK that is, so that results depend little on what else is there.
find_jdk() {
    if [ -n "${JAVA_HOME:-}" ]; then
        version=$(jdk_version "$JAVA_HOME")
        [ "${version:-0}" -lt $minimum_jdk ] || return 0
    fi
    found=''
    found_version=0
    for candidate in /usr/lib/jvm/* /usr/local/lib/jvm/* /opt/java/* /opt/jdk* \
            /Library/Java/JavaVirtualMachines/*/Contents/Home "$HOME"/.sdkman/candidates/java/* "$HOME"/.jdks/*; do
        version=$(jdk_version "$candidate")
        [ "${version:-0}" -ge $minimum_jdk ] || continue
        if [ "$found_version" -eq 0 ] || [ "$version" -lt "$found_version" ]; then
            found=$candidate
            found_version=$version
        fi
    done
    [ -n "$found" ] || die "no JDK of version $minimum_jdk or later was found; install one and set JAVA_HOME to it"
    JAVA_HOME=$found
    export JAVA_HOME
}

# True when the version $1 is at least 3.9.
new_enough_maven() {
    major=${1%%.*} rest=${1#*.}
    minor=${rest%%.*}
    [ "$major" -gt 3 ] || { [ "$major" -eq 3 ] && [ "$minor" -ge 9 ]; }
}

# Sets maven to a Maven of 3.9 or later. An older one on the PATH is used to fetch a newer one, as any other artifact,
# so that whatever mirror or proxy it is set up for serves here too.
find_maven() {
    maven="$tools/apache-maven-$maven_version/bin/mvn"
    [ ! -x "$maven" ] || return 0
    installed=$(command -v mvn || true)
    if [ -z "$installed" ]; then
        require_packages maven
        installed=$(command -v mvn) || die "no mvn on the PATH; install Maven 3.6 or later"
    fi
    version=$("$installed" --version 2>/dev/null | sed -n 's/.*Apache Maven \([0-9.]*\).*/\1/p' | head -n 1)
    if new_enough_maven "${version:-0.0}"; then
        maven=$installed
        return 0
    fi
    mkdir -p "$tools"
    (cd "$tools" && "$installed" -B -q org.apache.maven.plugins:maven-dependency-plugin:3.8.1:unpack \
        -Dartifact=org.apache.maven:apache-maven:$maven_version:zip:bin -DoutputDirectory="$tools" \
        -Dproject.basedir="$tools" -Dmdep.useBaseVersion=true) >"$tools/maven.log" 2>&1 || {
        grep -a ERROR "$tools/maven.log" >&2 || cat "$tools/maven.log" >&2
        die "Maven $maven_version could not be fetched with $installed; install Maven 3.9 or later"
    }
    chmod +x "$maven"
}

# What a window needs: GTK, a font, and what the JDK's Java 2D, which paints the icons, is linked to.
window_packages='libgtk-3-0 libxtst6 fonts-dejavu-core'

# True when what the Debian package $1 brings is there. Asks for the thing, not the package: its name can differ.
has_package() {
    case $1 in
        libgtk-3-0) has_library libgtk-3.so.0 ;;
        libxtst6) has_library libXtst.so.6 ;;
        xvfb) command -v Xvfb >/dev/null && command -v xvfb-run >/dev/null ;;
        xauth) command -v xauth >/dev/null ;;
        fonts-dejavu-core) [ -n "$(find /usr/share/fonts /usr/local/share/fonts -name DejaVuSans.ttf 2>/dev/null)" ] ;;
        libreoffice-calc-nogui) command -v soffice >/dev/null && has_libreoffice_calc ;;
        chromium) has_chromium ;;
        maven) command -v mvn >/dev/null ;;
        *) die "how to look for the package $1 is not known" ;;
    esac
}

has_library() {
    PATH=$PATH:/sbin:/usr/sbin ldconfig -p 2>/dev/null | grep -q "[[:space:]]$1 "
}

has_chromium() {
    command -v chromium >/dev/null || command -v chromium-browser >/dev/null || command -v google-chrome >/dev/null
}

has_libreoffice_calc() {
    office=$(readlink -f "$(command -v soffice)")
    [ -e "$(dirname "$office")/libsclo.so" ]
}

# Installs those of the Debian packages "$@" whose content is missing, or says exactly what to install.
require_packages() {
    [ "$(uname)" = Linux ] || return 0
    missing=
    for package in "$@"; do
        has_package "$package" || missing="$missing $package"
    done
    [ -n "$missing" ] || return 0
    if [ "$(id -u)" -ne 0 ] || ! command -v apt-get >/dev/null; then
        die "these Debian packages (or what another system calls them) are missing; as root: apt-get install$missing"
    fi
    printf 'turnheel: installing%s\n' "$missing" >&2
    mkdir -p "$tools"
    if ! install_packages >"$tools/packages.log" 2>&1 </dev/null; then
        tail -n 20 "$tools/packages.log" >&2
        die "apt-get could not install$missing; its output is in $tools/packages.log"
    fi
}

install_packages() {
    apt-get update || return
    # $missing is a list of words on purpose.
    # shellcheck disable=SC2086
    DEBIAN_FRONTEND=noninteractive apt-get install -y -o DPkg::Lock::Timeout=300 --no-install-recommends $missing
}

# Drops the lines of a Maven run that help nobody: one of them alone lists the whole target platform.
without_noise() {
    sed -u -e '/Resolving MavenDependencyRoots/d' -e '/[Nn]o digest algorithm/d' -e '/The digest algorithms/d' \
        -e '/^WARNING: .*sun\.misc\.Unsafe/d' -e '/^WARNING: Please consider/d' -e '/^WARNING: A terminally/d'
}
