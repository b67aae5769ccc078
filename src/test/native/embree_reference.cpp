// The reference for the ray benchmark: the same rays answered by Embree (Apache 2.0), any hit, one
// by one, one thread. Reads the file the benchmark writes; prints seconds of processor time:
// build, all rays, all pairs with the facing test first, and how many are blocked. With the
// argument "robust" no ray slips between two triangles at their common edge, as none does in
// ringbook.geometry; without it Embree is faster and promises less.
#include <embree3/rtcore.h>

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <ctime>
#include <cstring>
#include <vector>

static double now() {
  timespec t;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return t.tv_sec + 1e-9 * t.tv_nsec;
}

static std::vector<double> doubles(FILE* in, size_t count) {
  std::vector<double> v(count);
  if (fread(v.data(), 8, count, in) != count) throw 1;
  return v;
}

struct Ends {
  const double* from;
  const double* to;
  float hair;
};

static RTCRay ray(const Ends& e) {
  RTCRay r;
  float d[3];
  for (int k = 0; k < 3; k++) d[k] = float(e.to[k] - e.from[k]);
  float hair = e.hair / std::sqrt(d[0] * d[0] + d[1] * d[1] + d[2] * d[2]);
  r.org_x = float(e.from[0]);
  r.org_y = float(e.from[1]);
  r.org_z = float(e.from[2]);
  r.dir_x = d[0];
  r.dir_y = d[1];
  r.dir_z = d[2];
  r.tnear = hair;
  r.tfar = 1 - hair;
  r.time = 0;
  r.mask = -1;
  r.id = 0;
  r.flags = 0;
  return r;
}

int main(int argc, char** argv) {
  FILE* in = fopen(argv[1], "rb");
  int32_t n[4];
  if (!in || fread(n, 4, 4, in) != 4) return 1;
  std::vector<double> points = doubles(in, 3 * size_t(n[0]));
  std::vector<uint32_t> corners(3 * size_t(n[1]));
  if (fread(corners.data(), 4, corners.size(), in) != corners.size()) return 1;
  std::vector<double> patches = doubles(in, 6 * size_t(n[2]));
  std::vector<double> stations = doubles(in, 3 * size_t(n[3]));

  double t0 = now();
  RTCDevice device = rtcNewDevice("threads=1,user_threads=1");
  RTCScene scene = rtcNewScene(device);
  rtcSetSceneBuildQuality(scene, RTC_BUILD_QUALITY_MEDIUM);
  if (argc > 2 && !strcmp(argv[2], "robust")) rtcSetSceneFlags(scene, RTC_SCENE_FLAG_ROBUST);
  RTCGeometry mesh = rtcNewGeometry(device, RTC_GEOMETRY_TYPE_TRIANGLE);
  float* v = (float*)rtcSetNewGeometryBuffer(mesh, RTC_BUFFER_TYPE_VERTEX, 0, RTC_FORMAT_FLOAT3, 12, n[0]);
  for (size_t i = 0; i < points.size(); i++) v[i] = float(points[i]);
  uint32_t* c = (uint32_t*)rtcSetNewGeometryBuffer(mesh, RTC_BUFFER_TYPE_INDEX, 0, RTC_FORMAT_UINT3, 12, n[1]);
  for (size_t i = 0; i < corners.size(); i++) c[i] = corners[i];
  rtcCommitGeometry(mesh);
  rtcAttachGeometry(scene, mesh);
  rtcCommitScene(scene);
  double t1 = now();

  const float hair = 2e-6f;  // single precision needs a little more than a millionth
  RTCIntersectContext context;
  rtcInitIntersectContext(&context);
  long blocked = 0;
  for (int s = 0; s < n[3]; s++) {
    for (int i = 0; i < n[2]; i++) {
      RTCRay r = ray({&stations[3 * s], &patches[6 * i], hair});
      rtcOccluded1(scene, &context, &r);
      blocked += r.tfar < 0;
    }
  }
  double t2 = now();

  // The same question as a station at a time: patches that face away need no ray. (Asking the last
  // blocker first is not possible here: an any-hit ray does not say what it met.)
  long hidden = 0;
  for (int s = 0; s < n[3]; s++) {
    const double* o = &stations[3 * s];
    for (int i = 0; i < n[2]; i++) {
      const double* p = &patches[6 * i];
      double facing = 0;
      for (int k = 0; k < 3; k++) facing += (o[k] - p[k]) * p[3 + k];
      if (facing <= 0) continue;
      RTCRay r = ray({o, p, hair});
      rtcOccluded1(scene, &context, &r);
      hidden += r.tfar < 0;
    }
  }
  double t3 = now();
  printf("%.6f %.6f %.6f %ld %ld\n", t1 - t0, t2 - t1, t3 - t2, blocked, hidden);
  return 0;
}
