"""Shader programs: skinned people, coloured rooms, one light with a shadow."""

from __future__ import annotations

SKINNING = """
#version 330
layout(std140) uniform Bones { mat4 bones[128]; };
in vec3 in_place; in vec3 in_normal; in float in_cut; in float in_part;
in vec4 in_bone; in vec4 in_weight;
mat4 blend() {
    return in_weight.x * bones[int(in_bone.x)] + in_weight.y * bones[int(in_bone.y)]
         + in_weight.z * bones[int(in_bone.z)] + in_weight.w * bones[int(in_bone.w)];
}
"""

PERSON_VERTEX = (
    SKINNING
    + """
uniform mat4 view_projection; uniform mat4 light;
out vec3 rest; out vec3 normal; out vec3 place; out vec4 lit; out float cut; out float part;
void main() {
    mat4 m = blend();
    vec4 p = m * vec4(in_place, 1.0);
    rest = in_place; cut = in_cut; part = in_part;
    normal = mat3(m) * in_normal;
    place = p.xyz; lit = light * p;
    gl_Position = view_projection * p;
}
"""
)

SHADOW_VERTEX = (
    SKINNING
    + """
uniform mat4 light; out float cut;
void main() { cut = in_cut; gl_Position = light * blend() * vec4(in_place, 1.0); }
"""
)

SHADOW_FRAGMENT = """
#version 330
in float cut;
void main() { if (cut < 0.0) discard; }
"""

LIGHTING = """
uniform vec3 eye; uniform vec3 key_way; uniform vec3 key; uniform vec3 ambient;
uniform sampler2DShadow shadow;
float hash(vec3 p) { return fract(sin(dot(p, vec3(12.9898, 78.233, 37.719))) * 43758.5453); }
float noise(vec3 p) {
    vec3 i = floor(p), f = fract(p); f = f * f * (3.0 - 2.0 * f);
    return mix(
        mix(mix(hash(i), hash(i + vec3(1,0,0)), f.x),
            mix(hash(i + vec3(0,1,0)), hash(i + vec3(1,1,0)), f.x), f.y),
        mix(mix(hash(i + vec3(0,0,1)), hash(i + vec3(1,0,1)), f.x),
            mix(hash(i + vec3(0,1,1)), hash(i + vec3(1,1,1)), f.x), f.y), f.z);
}
float unshadowed(vec4 lit, float slope) {
    vec3 q = lit.xyz / lit.w * 0.5 + 0.5;
    if (any(lessThan(q, vec3(0.0))) || any(greaterThan(q, vec3(1.0)))) return 1.0;
    float near = q.z - 0.0015 - 0.004 * slope;
    return 0.25 * (texture(shadow, vec3(q.xy + vec2(0.0016, 0.0005), near))
                 + texture(shadow, vec3(q.xy + vec2(-0.0005, 0.0016), near))
                 + texture(shadow, vec3(q.xy + vec2(-0.0016, -0.0005), near))
                 + texture(shadow, vec3(q.xy + vec2(0.0005, -0.0016), near)));
}
vec3 shade(vec3 albedo, vec3 n, vec3 p, vec4 lit, float wrap, float gloss, float reach) {
    float d = dot(n, key_way);
    float direct = max((d + wrap) / (1.0 + wrap), 0.0);
    direct *= reach < 0.0 ? 1.0 + reach : mix(1.0, unshadowed(lit, 1.0 - abs(d)), reach);
    float sky = 0.72 + 0.28 * n.z;
    vec3 v = normalize(eye - p), h = normalize(v + key_way);
    float spark = gloss * pow(max(dot(n, h), 0.0), 24.0) * direct;
    vec3 fill = ambient * sky * (0.85 + 0.15 * max(dot(n, v), 0.0));
    return albedo * (key * direct + fill) * 0.62 + key * spark;
}
vec3 film(vec3 c) {
    c = c * (1.0 + c * 0.10) / (1.0 + c * 0.62);
    return pow(clamp(c, 0.0, 1.0), vec3(1.0 / 2.2));
}
"""

PERSON_FRAGMENT = (
    "#version 330\n"
    + LIGHTING
    + """
in vec3 rest; in vec3 normal; in vec3 place; in vec4 lit; in float cut; in float part;
uniform int material; uniform vec3 colour; uniform vec3 brow; uniform vec3 eye_rest;
uniform float face_scale; uniform float stripes;
out vec4 result;
float oval(vec2 p, vec2 c, vec2 r) { return 1.0 - smoothstep(0.7, 1.15, length((p - c) / r)); }
vec3 face(vec3 skin) {
    vec3 q = (rest - vec3(0.0, eye_rest.yz)) / face_scale;
    float ex = eye_rest.x / face_scale, m = abs(q.x);
    vec3 c = skin;
    if (q.y > 0.03 || abs(q.z) > 0.13) return c;
    if (part > 0.5) {
        float r = length(vec2(m - ex, q.z));
        if (q.y > 0.005) return vec3(0.55);
        return r < 0.0026 ? vec3(0.02) : r < 0.0058 ? vec3(0.10, 0.06, 0.03) : vec3(0.62);
    }
    float lift = 0.020 - 0.10 * max(abs(m - ex) - 0.012, 0.0);
    c = mix(c, brow, 0.85 * oval(vec2(m, q.z), vec2(ex + 0.002, lift), vec2(0.020, 0.0042)));
    vec3 lip = skin * vec3(0.88, 0.55, 0.55);
    c = mix(c, lip, 0.8 * oval(vec2(m, q.z), vec2(0.0, -0.0735), vec2(0.023, 0.0075)));
    c *= 1.0 - 0.35 * oval(vec2(m, q.z), vec2(0.0, -0.0735), vec2(0.022, 0.0012));
    return c * (1.0 - 0.18 * oval(vec2(m, q.z), vec2(ex, 0.0), vec2(0.024, 0.014)));
}
void main() {
    if (cut < 0.0) discard;
    vec3 n = normalize(normal), c = colour;
    float wrap = 0.25, gloss = 0.02;
    if (!gl_FrontFacing) { n = -n; c *= 0.5; }
    if (material == 0) {
        c = face(colour);
        wrap = 0.35; gloss = 0.05;
    } else if (material == 1 || material == 2) {
        c *= 0.88 + 0.24 * part;
        bool stripe = stripes > 0.5 && fract(rest.z * 15.0) < 0.32;
        if (material == 1 && stripe) c = mix(c, vec3(0.72), 0.7);
        if (material == 1) c *= 1.0 - 0.25 * (1.0 - smoothstep(0.0, 0.008, cut));
    } else if (material == 4) {
        c *= 0.55 + 0.9 * noise(rest * vec3(190.0, 190.0, 34.0));
        gloss = 0.035;
    } else {
        if (cut > 0.084) c = mix(c, vec3(0.75), 0.5);
        gloss = 0.06;
    }
    result = vec4(film(shade(c, n, place, lit, wrap, gloss, 1.0)), 1.0);
}
"""
)

ROOM_VERTEX = """
#version 330
in vec3 in_place; in vec3 in_normal; in vec3 in_colour; in float in_kind;
uniform mat4 view_projection; uniform mat4 light;
out vec3 normal; out vec3 place; out vec3 colour; out vec4 lit; flat out int kind;
void main() {
    place = in_place; normal = in_normal; colour = in_colour; kind = int(in_kind + 0.5);
    lit = light * vec4(in_place, 1.0);
    gl_Position = view_projection * vec4(in_place, 1.0);
}
"""

ROOM_FRAGMENT = (
    "#version 330\n"
    + LIGHTING
    + """
in vec3 normal; in vec3 place; in vec3 colour; in vec4 lit; flat in int kind;
uniform vec3 along; uniform float lightness;
layout(location = 0) out vec4 result; layout(location = 1) out vec4 in_light;
void main() {
    vec3 n = normalize(normal), c = colour, p = place;
    in_light = lit;
    float u = dot(p, along), v = dot(p, vec3(-along.y, along.x, 0.0)), gloss = 0.0;
    if (kind == 1) {
        float row = floor(v * 7.0), shift = hash(vec3(row, 1.0, 2.0)) * 1.3;
        float board = floor((u + shift) * 0.8);
        c *= 0.80 + 0.35 * hash(vec3(row, board, 5.0));
        c *= 0.88 + 0.24 * noise(vec3(u * 3.0, v * 70.0, board));
        c *= fract(v * 7.0) < 0.03 || fract((u + shift) * 0.8) < 0.004 ? 0.55 : 1.0;
        gloss = 0.05;
    } else if (kind == 2) {
        c *= 0.80 + 0.30 * noise(p * 130.0) + 0.10 * noise(p * 9.0);
    } else if (kind == 3) {
        vec2 t = fract(vec2(u, v) * 2.5), id = floor(vec2(u, v) * 2.5);
        c *= 0.90 + 0.14 * hash(vec3(id, 3.0)) + 0.06 * noise(p * 24.0);
        if (t.x < 0.02 || t.y < 0.02) c *= 0.7;
        gloss = 0.07;
    } else if (kind == 4) {
        c *= fract((abs(n.z) < 0.5 ? u + v : u) * 5.5) < 0.5 ? 1.0 : 0.88;
    } else if (kind == 5) {
        float m = noise(vec3(u * 9.0, v * 9.0, p.z * 9.0));
        c *= 0.96 + 0.07 * smoothstep(0.45, 0.6, m);
    } else if (kind == 6) {
        result = vec4(film(colour * (1.5 + 0.5 * p.z) * 0.8), 1.0);
        return;
    }
    c *= (0.97 + 0.05 * noise(p * 2.2)) * (n.z < -0.5 ? 2.0 : 1.0);
    float corner = 1.0 - 0.30 * exp(-p.z * 9.0) * (1.0 - abs(n.z));
    float foot = 1.0 - 0.45 * exp(-dot(p.xy, p.xy) * 9.0) * max(n.z, 0.0) * step(p.z, 0.05);
    vec3 s = shade(c * corner * foot, n, p, lit, 0.15, gloss, lightness - 1.0);
    result = vec4(film(s), 1.0);
}
"""
)

ROOM_SHADOW_VERTEX = """
#version 330
in vec3 in_place;
uniform mat4 light; out float cut;
void main() { cut = 1.0; gl_Position = light * vec4(in_place, 1.0); }
"""

BACKDROP_VERTEX = """
#version 330
in vec2 in_place; out vec2 at;
void main() { at = in_place * 0.5 + 0.5; gl_Position = vec4(in_place, 0.0, 1.0); }
"""

BACKDROP_FRAGMENT = """
#version 330
in vec2 at; out vec4 result;
uniform sampler2D bright; uniform sampler2D dim; uniform sampler2D light_place;
uniform sampler2DShadow shadow;
void main() {
    vec4 lit = texture(light_place, at);
    vec3 q = lit.xyz * 0.5 + vec3(0.5, 0.5, 0.498);
    result = texture(bright, at);
    if (q.x < 0.0 || q.y < 0.0 || q.x > 1.0 || q.y > 1.0) return;
    float sum = 0.25 * (texture(shadow, q + vec3(0.0024, 0.0008, 0.0))
                      + texture(shadow, q + vec3(-0.0008, 0.0024, 0.0))
                      + texture(shadow, q + vec3(-0.0024, -0.0008, 0.0))
                      + texture(shadow, q + vec3(0.0008, -0.0024, 0.0)));
    if (sum < 1.0) result = mix(texture(dim, at), result, sum);
}
"""
