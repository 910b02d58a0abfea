package drylap.pace;

import drylap.assembly.Method;
import drylap.kernel.CrewId;

/** Installs that are compared with each other. */
public record Cell(CrewId crew, Method method, SizeClass size) {}
