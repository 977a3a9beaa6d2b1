// Dear ImGui's OpenGL part asks the drawing surface what is set before each frame, and sets it back afterwards. In
// a browser most of these questions wait until everything asked for earlier has been drawn: two thirds of what a
// frame cost. Nobody but that part draws here, so on the page its questions come to these two functions
// (app/CMakeLists.txt renames them), which answer what a fresh surface would. What it then sets back is that, and
// nothing relies on it.
#include <GLES3/gl3.h>

extern "C" {

// What is bound, viewport, scissors and blending: of a fresh surface (OpenGL ES 3.0.6, section 6.2, "State
// Tables"). All other questions go on to the surface; they are asked once, at the start.
void gs_gl_get(GLenum name, GLint* answer) {
  switch (name) {
    case GL_ACTIVE_TEXTURE:
      *answer = GL_TEXTURE0;
      return;
    case GL_BLEND_SRC_RGB:
    case GL_BLEND_SRC_ALPHA:
      *answer = GL_ONE;
      return;
    case GL_BLEND_DST_RGB:
    case GL_BLEND_DST_ALPHA:
      *answer = GL_ZERO;
      return;
    case GL_BLEND_EQUATION_RGB:
    case GL_BLEND_EQUATION_ALPHA:
      *answer = GL_FUNC_ADD;
      return;
    case GL_CURRENT_PROGRAM:
    case GL_TEXTURE_BINDING_2D:
    case GL_SAMPLER_BINDING:
    case GL_ARRAY_BUFFER_BINDING:
    case GL_ELEMENT_ARRAY_BUFFER_BINDING:
    case GL_VERTEX_ARRAY_BINDING:
      *answer = 0;
      return;
    case GL_VIEWPORT:
    case GL_SCISSOR_BOX:
      for (int i = 0; i < 4; ++i) answer[i] = 0;  // each frame sets its own
      return;
    default:
      glGetIntegerv(name, answer);
  }
}

GLboolean gs_gl_is_enabled(GLenum) { return GL_FALSE; }

}  // extern "C"
