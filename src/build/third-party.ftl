<#-- The list of third-party libraries that the packaged program carries, one line each. -->
Third-party libraries carried by Leverwright

<#list dependencyMap as e>
<#assign project = e.getKey()/>
<#assign licenses = e.getValue()/>
${project.groupId}:${project.artifactId}:${project.version} | ${licenses?join(", ")} | ${project.url!"no address given"}
</#list>

Fonts: DejaVu Sans, DejaVu Sans Bold and DejaVu Sans Mono 2.37 | Bitstream Vera licence with public-domain changes | https://dejavu-fonts.github.io
